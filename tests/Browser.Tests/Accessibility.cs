using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;

namespace Calx.Browser.Tests;

/// <summary>What axe-core says of a page.</summary>
internal static class Accessibility
{
    private static readonly string[] Grave = ["serious", "critical"];

    /// <summary>What is serious on a page, a line each.</summary>
    /// <param name="page">The page, in a context that passes over the content policy: axe puts styles of its own into pages.</param>
    /// <param name="colours">Whether only the contrast of colours is looked at.</param>
    public static async Task<IReadOnlyList<string>> SeriousOn(IPage page, bool colours = false)
    {
        AxeResult result = await page.RunAxe(colours ? new AxeRunOptions { RunOnly = RunOnlyOptions.Rules("color-contrast") } : new AxeRunOptions());
        return [.. result.Violations.Where(v => Grave.Contains(v.Impact)).Select(v => $"{page.Url} {v.Id}: {v.Help} {string.Join(" | ", v.Nodes.Take(4).Select(n => n.Html))}")];
    }
}
