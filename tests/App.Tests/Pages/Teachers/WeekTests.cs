using System.Net;
using AngleSharp.Dom;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>The technician's week, from the lessons in the records.</summary>
public sealed class WeekTests
{
    /// <summary>Thursday 26 November 2026.</summary>
    private static readonly FixedClock Clock = new(new DateTimeOffset(2026, 11, 26, 7, 30, 0, TimeSpan.Zero));

    [Fact]
    public async Task This_week_stands_there_with_what_is_wanted_at_one_time()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(Clock);
        await Lesson(screen, "9F", "3", "Lab 2", "?groups=6");
        await Lesson(screen, "9G", " 3", "Lab 4", "?groups=5");
        await Lesson(screen, "10H", "5", "Lab 2", "?groups=8");
        await Lesson(screen, "8A", "1", "Lab 1", "?groups=4", date: "2026-12-03");
        IDocument page = await screen.Page("/week");
        Assert.Contains("Monday 23 November to Sunday 29 November 2026", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["Thursday 26 November"], page.QuerySelectorAll("section h2").Select(h => h.TextContent).Take(1));
        Assert.Equal(["9F", "9G", "10H"], page.QuerySelectorAll("table.papers")[0].QuerySelectorAll("tbody tr").Select(r => r.Children[2].TextContent));
        // 6 and 5 mats at once in period 3 with a spare each are more than 8 and one in period 5; ribbon is used up in all three: (6 + 5 + 8) × 0.24 g × 1.2.
        Assert.Equal("13", Wanted(page, "burner, tripod"));
        Assert.Equal("5.48\u00a0g", Wanted(page, "magnesium ribbon"));
        // 5 + 0.5, 20 + 1, 5 + 1 a group and 10 min for the balances: only what is not left to the lesson; see the requisition.
        Assert.Contains(page.QuerySelectorAll("h3"), h => h.TextContent.StartsWith("To prepare: ", StringComparison.Ordinal));
        Assert.Contains(page.QuerySelectorAll("h3"), h => h.TextContent == "Still hot afterwards");
        IDocument next = await screen.Page("/week?from=2026-12-04");
        Assert.Contains("8A", next.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("9F", next.Body.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_than_there_is_in_one_period_is_told_as_is_a_period_that_nobody_said()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(Clock);
        await screen.Send("/balances", ("letter", "A"), ("label", "by the window"), ("resolution", "0.01"));
        await Lesson(screen, "9F", "3", "Lab 2", "?groups=6&balances=1&kit.burner=8");
        Assert.Empty(TeachersScreen.Faults(await screen.Page("/week")));
        await Lesson(screen, "9G", "3", "Lab 4", "?groups=6&balances=1");
        string faults = TeachersScreen.Faults(await screen.Page("/week"));
        Assert.Contains("together they want 14 of ‘burner, tripod and heat-resistant mat’, and there are 8", faults, StringComparison.Ordinal);
        Assert.Contains("together they plan with 2 balances, and the school has 1", faults, StringComparison.Ordinal);
        await Lesson(screen, "8A", "", "Lab 1", "?groups=4&balances=1");
        Assert.Contains("a lesson says no period", TeachersScreen.Faults(await screen.Page("/week")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_wanted_for_a_cover_lesson()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(Clock);
        string lesson = await Lesson(screen, "9F", "3", "Lab 2", "?groups=6");
        Assert.NotEqual("", Wanted(await screen.Page("/week"), "magnesium ribbon"));
        await screen.Send($"{lesson}/cover", ("sure", "yes"));
        IDocument page = await screen.Page("/week");
        Assert.Contains("cover lesson, nothing is wanted", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("magnesium ribbon", page.Body.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("To prepare", page.Body.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_can_be_printed_and_edited_and_a_day_that_is_none_is_told()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(Clock);
        await Lesson(screen, "9F", "3", "Lab 2", "?groups=6");
        IDocument page = await screen.Page("/week?from=soon");
        Assert.Contains("‘soon’ is no day", TeachersScreen.Faults(page), StringComparison.Ordinal);
        foreach (string link in page.QuerySelectorAll("nav a[href*='technician-week']").Select(a => a.GetAttribute("href")!))
        {
            Assert.Equal(HttpStatusCode.OK, (await screen.Browser.GetAsync(link, TestContext.Current.CancellationToken)).StatusCode);
        }

        Assert.Contains("L. Marsh", (await screen.Page("/week/technician-week.html")).Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await screen.Browser.GetAsync("/week/other.html", TestContext.Current.CancellationToken)).StatusCode);
        Assert.NotNull((await screen.Page("/lessons")).QuerySelector("a[href='/week']"));
    }

    [Fact]
    public async Task A_week_without_lessons_says_so()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(Clock);
        Assert.Contains("No lesson of this week", (await screen.Page("/week")).Body!.TextContent, StringComparison.Ordinal);
        await screen.Page("/week/technician-week.html");
        await screen.Page("/week?from=9999-12-31");
        await screen.Page("/week?from=0001-01-01");
    }

    [Fact]
    public async Task Teacher_and_period_of_a_lesson_are_kept_changed_and_printed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start(Clock);
        string lesson = await Lesson(screen, "9F", "3", "Lab 2", "?groups=4");
        string requisition = (await screen.Page($"{lesson}/papers/requisition.html")).Body!.TextContent;
        Assert.Contains("L. Marsh", requisition, StringComparison.Ordinal);
        await screen.Send($"{lesson}/settings", ("date", "2026-11-26"), ("room", "Lab 2"), ("period", "10:40"), ("teacher", ""));
        requisition = (await screen.Page($"{lesson}/papers/requisition.html")).Body!.TextContent;
        Assert.DoesNotContain("L. Marsh", requisition, StringComparison.Ordinal);
        Assert.Contains("10:40", requisition, StringComparison.Ordinal);
        Assert.Contains("The period is too long", TeachersScreen.Faults(await screen.After($"{lesson}/settings", ("date", "2026-11-26"), ("period", new string('3', 81)))), StringComparison.Ordinal);
    }

    private static string Wanted(IDocument page, string item) => page.QuerySelectorAll("table.papers")[1].QuerySelectorAll("tbody tr")
        .Single(r => r.QuerySelector("th")!.TextContent.StartsWith(item, StringComparison.Ordinal)).Children[1].TextContent;

    private static Task<string> Lesson(TeachersScreen screen, string name, string period, string room, string plan, string date = "2026-11-26") => screen.Send(
        "/lessons",
        ("practical", "magnesium-oxide"), ("plan", plan), ("name", name), ("year", "2026/27"), ("date", date), ("room", room), ("decide", "yes"), ("period", period), ("teacher", "L. Marsh"));
}
