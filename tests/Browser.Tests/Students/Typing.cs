namespace Calx.Browser.Tests.Students;

/// <summary>What a group does on its page.</summary>
internal static class Typing
{
    /// <summary>The stage: what fills the screen now.</summary>
    public static ILocator Stage(this IPage page) => page.Locator("#stage");

    /// <summary>Taps 'Done' until a reading is asked for.</summary>
    public static async Task GoOnToReading(this IPage page)
    {
        ILocator field = page.Stage().Locator(".figure");
        ILocator done = page.Stage().Locator("form[data-what='at-step'] button");
        for (int i = 0; i < 20; i++)
        {
            await Expect(field.Or(done).First).ToBeVisibleAsync();
            if (await field.IsVisibleAsync())
            {
                return;
            }

            await done.First.ClickAsync();
            await page.WaitForTimeoutAsync(60);
        }

        Assert.Fail("No reading was asked for after twenty steps.");
    }

    /// <summary>Types a reading on the keypad and sends it.</summary>
    public static async Task Type(this IPage page, string written, string balance = "A")
    {
        await page.Stage().Locator($".letters label:has(input[value='{balance}'])").ClickAsync();
        foreach (char key in written)
        {
            await page.Stage().Locator(".keypad .key", new LocatorLocatorOptions { HasTextString = key.ToString() }).First.ClickAsync();
        }

        await page.Stage().Locator("form[data-typing] > button.tall").ClickAsync();
    }

    /// <summary>Types a reading and sends it also where the countdown still runs and the page asks about that.</summary>
    public static async Task TypeWarmOrCool(this IPage page, string written)
    {
        await page.Type(written);
        // The question is there as soon as 'Send' was pressed.
        ILocator send = page.Stage().Locator(".doubt button", new LocatorLocatorOptions { HasTextString = $"Send {written}" });
        if (await send.IsVisibleAsync())
        {
            await send.ClickAsync();
        }
    }

    /// <summary>Weighs before heating, taps 'Done' until a flame is asked for, and lights it.</summary>
    public static async Task WeighAndLight(this IPage page)
    {
        foreach (string written in (string[])["28.10", "28.34"])
        {
            await page.GoOnToReading();
            await page.Type(written);
        }

        ILocator lit = page.Stage().Locator("form[data-what='flame-on'] button");
        ILocator done = page.Stage().Locator("form[data-what='at-step'] button");
        for (int i = 0; i < 6 && !await lit.IsVisibleAsync(); i++)
        {
            await done.First.ClickAsync();
            await page.WaitForTimeoutAsync(100);
        }

        await lit.ClickAsync();
    }

    /// <summary>The button that puts the flame out.</summary>
    public static ILocator FlameOut(this IPage page) => page.Stage().Locator("form[data-what='flame-out'] button");

    /// <summary>Opens a part of the page: now, sent, seen or help.</summary>
    public static Task Open(this IPage page, string part) => page.Locator($"nav [data-part='{part}']").ClickAsync();

    /// <summary>How many entries wait on the phone.</summary>
    public static Task<int> Waiting(this IPage page) => page.EvaluateAsync<int>(
        "() => Object.keys(localStorage).filter(k => k.split('.')[3] === 'e' && JSON.parse(localStorage.getItem(k)).state === 'waiting').length");
}
