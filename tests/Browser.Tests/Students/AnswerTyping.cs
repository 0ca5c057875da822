namespace Calx.Browser.Tests.Students;

/// <summary>What a student does on the page of answers.</summary>
internal static class AnswerTyping
{
    /// <summary>The question that is shown.</summary>
    public static ILocator Question(this IPage page) => page.Locator(".question:not(.hidden)");

    /// <summary>Goes to the answers and says who one is.</summary>
    public static async Task BeginToAnswer(this IPage page, int member)
    {
        if (!page.Url.EndsWith("/answers", StringComparison.Ordinal))
        {
            await page.Locator("nav.parts a[href='/answers']").ClickAsync();
        }

        await page.Locator($"button[name=member][value='{member}']").ClickAsync();
        await Expect(page.Locator("#pad")).ToBeVisibleAsync();
    }

    /// <summary>Hands the device on.</summary>
    public static async Task HandOn(this IPage page, int member)
    {
        await page.GetByText("Hand on").ClickAsync();
        await page.BeginToAnswer(member);
    }

    /// <summary>Presses keys under the question.</summary>
    public static async Task Press(this IPage page, params string[] keys)
    {
        foreach (string key in keys)
        {
            await page.Locator("#pad .key").Filter(new() { HasTextRegex = new($"^{System.Text.RegularExpressions.Regex.Escape(key)}$") }).ClickAsync();
        }
    }

    /// <summary>Types a number with the keys and sends it.</summary>
    public static async Task Answer(this IPage page, string written)
    {
        string keys = written.Replace(" x 10^", "p", StringComparison.Ordinal).Replace('-', '\u2212');
        await page.Press([.. keys.Select(k => k == 'p' ? "×10" : k.ToString())]);
        await Expect(page.Question().Locator(".figure")).ToHaveValueAsync(written);
        await page.Question().GetByText("Send").ClickAsync();
    }
}
