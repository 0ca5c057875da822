using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>What a lesson's readings show, and what stays closed until the teacher opens it.</summary>
public sealed class FindingsTests
{
    private static readonly (string What, string Written)[][] Groups =
    [
        [("empty", "24.31"), ("before", "24.55"), ("after", "24.70"), ("after2", "24.71")],
        [("empty", "25.02"), ("before", "25.27"), ("after", "25.43"), ("after2", "25.43")],
        [("empty", "23.78"), ("before", "24.01"), ("after", "24.16"), ("after2", "24.16")],
        [("empty", "24.90"), ("before", "25.14"), ("after", "24.95"), ("after2", "24.95")],
    ];

    [Fact]
    public async Task Before_any_reading_the_page_says_what_to_do()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        IDocument page = await screen.Page($"{lesson}/findings");
        Assert.NotNull(page.QuerySelector($"a[href='{lesson}/grid']"));
        Assert.Null(page.QuerySelector(".report"));
    }

    [Fact]
    public async Task Causes_odd_results_and_the_accepted_value_come_only_when_asked_for()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Taught(screen);
        IDocument closed = await screen.Page($"{lesson}/findings");
        string text = closed.QuerySelector(".report")!.TextContent;
        Assert.DoesNotContain("accepted", text, StringComparison.OrdinalIgnoreCase);
        Assert.Null(closed.QuerySelector("#causes"));
        Assert.Null(closed.QuerySelector("tbody.odd"));
        IDocument open = await screen.Page($"{lesson}/findings?all=yes");
        Assert.Contains("accepted value", open.QuerySelector(".report")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(open.QuerySelector("#causes"));
        Assert.Empty(open.QuerySelectorAll("[style]"));
    }

    [Fact]
    public async Task What_a_group_saw_is_said_in_words_and_not_by_the_practicals_id()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Taught(screen);
        await screen.Send($"{lesson}/write", ("id", NewEntryId.Draw().ToString()), ("kind", "observation"), ("group", "1"), ("trial", "1"), ("what", "smoke-seen"), ("seen", "yes"), ("back", lesson));
        string text = (await screen.Page($"{lesson}/findings?all=yes")).QuerySelector(".report")!.TextContent;
        Assert.Contains("Noted: white smoke was seen.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("smoke-seen", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_group_without_a_weighing_after_heating_is_said_to_have_none_yet()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson("?groups=4");
        foreach ((string group, string what, string written) in new[] { ("1", "empty", "24.31"), ("1", "before", "24.55"), ("1", "after", "24.70"), ("2", "empty", "25.02"), ("2", "before", "25.27") })
        {
            await screen.Send($"{lesson}/write", ("id", NewEntryId.Draw().ToString()), ("kind", "reading"), ("group", group), ("trial", "1"), ("what", what), ("written", written), ("back", lesson));
        }

        string[] words = [.. (await screen.Page($"{lesson}/findings")).QuerySelectorAll("table.groups td.words").Select(c => c.TextContent)];
        Assert.Equal(["one weighing", "not weighed after heating yet"], words);
    }

    [Fact]
    public async Task The_report_is_a_file_that_needs_nothing_else()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Taught(screen);
        HttpResponseMessage answer = await screen.Browser.GetAsync($"{lesson}/report", TestContext.Current.CancellationToken);
        Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.Equal("findings-9F-2026-11-26-magnesium-oxide.html", answer.Content.Headers.ContentDisposition.FileName!.Trim('"'));
        IDocument page = await TeachersScreen.Parsed(answer);
        Assert.Empty(page.QuerySelectorAll("script, link, [src]"));
        Assert.Contains("9F", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_history_of_a_practical_has_a_row_a_lesson_and_leaves_trial_runs_out()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Taught(screen);
        await screen.NewLesson(trial: true);
        IDocument page = await screen.Page("/practicals/magnesium-oxide/history");
        IElement row = Assert.Single(page.QuerySelectorAll("tbody tr"));
        Assert.NotNull(row.QuerySelector($"a[href='{lesson}/findings']"));
        Assert.DoesNotContain("odd result", page.QuerySelector("thead")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("odd result", (await screen.Page("/practicals/magnesium-oxide/history?all=yes")).QuerySelector("thead")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_history_says_how_many_groups_are_in_the_value_and_writes_an_interval_as_finely_as_the_value()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await Taught(screen);
        string[] cells = [.. (await screen.Page("/practicals/magnesium-oxide/history")).QuerySelectorAll("tbody td.n").Select(c => c.TextContent.Trim())];
        // Group 4 lost nearly all that it gained, and is set aside.
        Assert.Equal("3 of 4", cells[2]);
        int decimals = Decimals(cells[0].Split(' ')[0]);
        Assert.All(cells[1].Split(" to "), end => Assert.Equal(decimals, Decimals(end)));
    }

    [Fact]
    public async Task Slips_have_one_for_each_group()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson("?groups=7");
        HttpResponseMessage answer = await screen.Browser.GetAsync($"{lesson}/slips", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(7, (await TeachersScreen.Parsed(answer)).QuerySelectorAll("article.slip").Length);
    }

    [Fact]
    public async Task Once_there_are_readings_the_papers_hold_a_report_and_a_sheet_for_the_wall()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string before = await screen.NewLesson();
        Assert.DoesNotContain((await screen.Page($"{before}/papers")).QuerySelectorAll("table.papers th"), h => h.TextContent is "Class report" or "Wall display");
        string lesson = await Taught(screen);
        Assert.NotNull((await screen.Page($"{lesson}/findings")).QuerySelector($"a[href='{lesson}/papers']"));
        IDocument papers = await screen.Page($"{lesson}/papers");
        string[] names = [.. papers.QuerySelectorAll("table.papers tbody th").Select(h => h.TextContent)];
        Assert.Contains("Class report", names);
        Assert.Contains("Wall display", names);
        string report = (await screen.Page($"{lesson}/papers/class-report.html")).Body!.TextContent.Replace('\u00a0', ' ');
        IDocument findings = await screen.Page($"{lesson}/findings?all=yes");
        Assert.Contains(findings.QuerySelectorAll(".conclusion li")[1].TextContent.Replace('\u00a0', ' '), report, StringComparison.Ordinal);
        Assert.Contains("Group 4. ", report, StringComparison.Ordinal);
        Assert.DoesNotContain("DRAFT", report, StringComparison.Ordinal);
        Assert.DoesNotContain("accepted", (await screen.Page($"{lesson}/papers/wall-display.html")).Body!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("accepted 1", (await screen.Page($"{lesson}/papers/wall-display.html?accepted=yes")).Body!.TextContent, StringComparison.Ordinal);
        using var zip = new System.IO.Compression.ZipArchive(await screen.Browser.GetStreamAsync($"{lesson}/papers/papers.zip", TestContext.Current.CancellationToken));
        Assert.All((string[])["class-report.docx", "wall-display.html", "pictures/dots-chart.png", "pictures/ratio-chart.svg"], name => Assert.NotNull(zip.GetEntry(name)));
    }

    private static int Decimals(string number) => number.Length - 1 - number.IndexOf('.', StringComparison.Ordinal);

    private static async Task<string> Taught(TeachersScreen screen)
    {
        string lesson = await screen.NewLesson("?groups=4");
        for (int group = 1; group <= Groups.Length; group++)
        {
            foreach ((string what, string written) in Groups[group - 1])
            {
                await screen.Send($"{lesson}/write", ("id", NewEntryId.Draw().ToString()), ("kind", "reading"), ("group", FormattableString.Invariant($"{group}")), ("trial", "1"), ("what", what), ("written", written), ("back", lesson));
            }
        }

        return lesson;
    }
}
