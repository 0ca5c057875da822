using AngleSharp.Dom;
using Calx.Records.Lessons;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>The safety check: signed for just one plan of one version of a practical.</summary>
public sealed class SafetyCheckTests
{
    private const string Magnesium = "/practicals/magnesium-oxide";

    private static readonly (string Ticked, string Initials, string Expected)[] NotSigned =
        [("", "LM", "Tick"), ("yes", "", "Initials"), ("yes", "LMNOPQRSTUVWX", "Initials")];

    [Fact]
    public async Task A_signature_with_initials_and_date_closes_the_gate_for_that_plan()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(new FixedClock(new DateTimeOffset(2026, 11, 26, 9, 0, 0, TimeSpan.Zero)));
        Assert.Contains("Not yet checked", await Safety(screen, "?groups=2&minutes=200"), StringComparison.Ordinal);
        await screen.Send($"{Magnesium}/sign", ("plan", "?groups=2&minutes=200"), ("checked", "yes"), ("initials", "LM"));
        Assert.Contains("LM, 26 November 2026", await Safety(screen, "?groups=2&minutes=200"), StringComparison.Ordinal);
        Assert.Contains("LM, 26 November 2026", (await screen.Page("/practicals")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Another_amount_or_step_asks_again()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.Send($"{Magnesium}/sign", ("plan", "?groups=2&minutes=200"), ("checked", "yes"), ("initials", "LM"));
        foreach (string change in (string[])["mass=0.2", "heatings=1", "without=firing", "move=work-out"])
        {
            Assert.Contains("Not yet checked", await Safety(screen, $"?groups=2&minutes=200&{change}"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Another_number_of_groups_or_balances_does_not()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.Send($"{Magnesium}/sign", ("plan", "?groups=2&minutes=200"), ("checked", "yes"), ("initials", "LM"));
        Assert.DoesNotContain("Not yet checked", await Safety(screen, "?groups=3&minutes=150&balances=3"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_tick_or_the_initials_nothing_is_signed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        foreach ((string ticked, string initials, string expected) in NotSigned)
        {
            IDocument page = await screen.After($"{Magnesium}/sign", ("plan", "?groups=2&minutes=200"), ("checked", ticked), ("initials", initials));
            Assert.Contains(expected, page.QuerySelector("#safety .fault")!.TextContent, StringComparison.Ordinal);
        }

        Assert.Empty(await screen.Host.Store.Signatures("magnesium-oxide", TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_lesson_is_signed_for_on_its_own_page_and_what_it_prints_says_draft_until_then()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        Assert.Contains("DRAFT", (await screen.Page($"{lesson}/slips")).Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("DRAFT", (await screen.Page($"{lesson}/plan")).QuerySelector("header")!.TextContent, StringComparison.Ordinal);
        IDocument signed = await screen.After($"{lesson}/sign", ("checked", "yes"), ("initials", "LM"));
        Assert.Contains("tried out: LM", signed.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("DRAFT", (await screen.Page($"{lesson}/plan")).Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("DRAFT", (await screen.Page($"{lesson}/slips")).Body!.TextContent, StringComparison.Ordinal);
        Signature kept = Assert.Single(await screen.Host.Store.Signatures("magnesium-oxide", TestContext.Current.CancellationToken));
        Assert.Equal("LM", kept.Initials);
    }

    [Fact]
    public async Task The_page_says_who_decides_and_lists_hazards_with_controls()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page($"{Magnesium}?groups=2&minutes=200");
        Assert.Contains("Your employer’s risk assessment and local rules decide", page.QuerySelector("#safety")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("competent", page.QuerySelector("#safety")!.TextContent, StringComparison.Ordinal);
        Assert.NotEmpty(page.QuerySelectorAll(".caution tbody tr"));
    }

    private static async Task<string> Safety(TeachersScreen screen, string query) =>
        (await screen.Page(Magnesium + query)).QuerySelector("#safety")!.TextContent;
}
