namespace Calx.Browser.Tests;

/// <summary>When a page has come.</summary>
internal static class Arrival
{
    // Its scripts have run; pictures and fonts may still be on their way on a busy machine.
    private static readonly PageWaitForURLOptions Scripted = new() { WaitUntil = WaitUntilState.DOMContentLoaded };

    /// <summary>Waits until the page at an address (with stars for what may be anything) can be used.</summary>
    public static Task Reached(this IPage page, string address) => page.WaitForURLAsync(address, Scripted);
}
