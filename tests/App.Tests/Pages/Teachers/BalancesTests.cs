using AngleSharp.Dom;
using Calx.App.Live;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>Balances and their checks with a weight.</summary>
public sealed class BalancesTests
{
    private static readonly (string Weight, string Shown, string Expected)[] NoChecks =
    [
        ("50.000", "50.1", "shows 2 decimals"),
        ("50.000", "50.100", "shows 2 decimals"),
        ("50,000", "50.10", "full stop"),
        ("-1", "50.10", "not a mass"),
        ("50.000", "", "not a number"),
    ];

    private static readonly (string Letter, string Resolution, string Expected)[] NoBalances =
    [
        ("B", "0,01", "full stop"),
        ("B", "0.03", "smallest step"),
        ("B", "0", "smallest step"),
        ("", "0.01", "letter"),
        ("A", "0.01", "A"),
    ];

    [Fact]
    public async Task A_check_is_kept_as_it_was_written_and_the_page_says_what_it_shows()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string balance = await Add(screen, "A", "0.01");
        Assert.Contains("No check yet", (await screen.Page(balance)).Body!.TextContent, StringComparison.Ordinal);
        IDocument page = await screen.After($"{balance}/checks", ("weight", "50.000"), ("shown", "50.10"), ("by", "LM"));
        IElement row = page.QuerySelector("#checks tbody tr")!;
        Assert.Contains("50.000", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("50.10", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("+0.1", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("10 divisions", page.QuerySelector(".sentences")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.QuerySelector("figure svg"));
    }

    [Fact]
    public async Task A_check_that_the_balance_cannot_have_shown_is_asked_about_and_what_was_typed_stays()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string balance = await Add(screen, "A", "0.01");
        foreach ((string weight, string shown, string expected) in NoChecks)
        {
            IDocument page = await TeachersScreen.Parsed(await screen.Post($"{balance}/checks", ("weight", weight), ("shown", shown), ("by", "LM")));
            Assert.Contains(expected, TeachersScreen.Faults(page), StringComparison.Ordinal);
            Assert.Equal(weight, page.QuerySelector("input[name=weight]")!.GetAttribute("value"));
            Assert.Null(page.QuerySelector("#checks"));
        }
    }

    [Fact]
    public async Task A_balance_needs_a_letter_of_its_own_and_a_step_that_balances_have()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await Add(screen, "A", "0.01");
        foreach ((string letter, string resolution, string expected) in NoBalances)
        {
            IDocument page = await screen.After("/balances", ("letter", letter), ("resolution", resolution));
            Assert.Contains(expected, TeachersScreen.Faults(page), StringComparison.Ordinal);
            Assert.Single(page.QuerySelectorAll("li.balance"));
        }
    }

    [Fact]
    public async Task A_lesson_whose_readings_name_the_balance_stands_on_its_page()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string balance = await Add(screen, "A", "0.01");
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/write", ("id", NewEntryId.Draw().ToString()), ("kind", "reading"), ("group", "1"), ("trial", "1"), ("what", "empty"), ("written", "24.31"), ("balance", "a"), ("back", lesson));
        IDocument page = await screen.Page(balance);
        Assert.NotNull(page.QuerySelector($"td + th a[href='{lesson}']"));
    }

    private static async Task<string> Add(TeachersScreen screen, string letter, string resolution) =>
        (await screen.After("/balances", ("letter", letter), ("resolution", resolution), ("label", "by the window"))).QuerySelector("li.balance a")!.GetAttribute("href")!;
}
