using System.IO.Compression;
using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Teachers;
using Calx.Records.Archive;
using Calx.Records.Journal;
using Calx.Records.Storage;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Students;

/// <summary>A lesson that is turned into a cover lesson: no practical work, simulated readings for every group.</summary>
public sealed class CoverLessonTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task It_is_turned_only_where_that_was_confirmed_and_the_journal_says_when()
    {
        await using Taught lesson = await Taught.Start();
        Assert.Contains("fault=", await Turn(lesson, sure: false), StringComparison.Ordinal);
        Assert.Empty(await lesson.Journal());
        Assert.Contains("done=", await Turn(lesson), StringComparison.Ordinal);
        await Turn(lesson);
        JournalEntry entry = Assert.Single(await lesson.Journal());
        Assert.Equal((Acts.Cover, "yes", 0), (entry.Cell.What, ((EntryContent.Happening)entry.Content).Text, entry.Cell.Group));
        Assert.Contains("no practical work", (await Page(lesson, $"/lessons/{lesson.Lesson.Id}")).QuerySelector("p.done")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_student_reads_a_simulated_balance_and_nothing_of_heat()
    {
        await using Taught lesson = await Taught.Start(signed: false);
        await Turn(lesson);
        Device device = await lesson.Device(2);
        var read = new List<string>();
        for (int i = 0; i < 3; i++)
        {
            IDocument page = await device.Page();
            Assert.DoesNotMatch("(?i)hot|flame|burner|tongs|gas off|heat strongly|glow|eye protection|weigh the|weigh with|weigh when", Visible(page));
            Assert.Empty(page.QuerySelectorAll("#now [name=balance], #now [data-flame], #now [data-kind=do], #seen .ticks button"));
            Assert.Contains("simulated", page.QuerySelector(".announced")!.TextContent, StringComparison.Ordinal);
            read.Add(await ReadNext(device));
        }

        Assert.Equal(["empty", "before", "after"], read);
        IDocument decides = await device.Page();
        Assert.Equal("Has the mass stopped changing?", decides.QuerySelector("#now > .place h1")!.TextContent);
        Assert.DoesNotMatch("(?i)hot |flame|tongs|gas", Visible(decides));
        Assert.All(decides.QuerySelectorAll("#sent .readings small"), s => Assert.Equal("simulated", s.TextContent));
        await device.Tell(Entries.Happening(Acts.Decided, GroupDecision.Reheat).With("trial", 2));
        Assert.Equal("after2", await ReadNext(device));
    }

    [Fact]
    public async Task Nothing_counts_and_an_export_says_simulated()
    {
        await using Taught lesson = await Taught.Start();
        await Turn(lesson);
        Device device = await lesson.Device(3);
        await ReadNext(device);
        await ReadNext(device);
        await ReadNext(device);
        LessonView view = await (await lesson.Room()).Now(Cancel);
        Assert.All(view.Groups, g => Assert.True(view.State.Group(g).IsSimulated));
        Assert.Null(LessonFindings.Of(view, new LetteredBalances([]), causes: false));
        using var zip = new MemoryStream();
        await LessonArchive.WriteLesson(lesson.Host.Store, lesson.Lesson.Id, zip, TableNames.Of, Cancel);
        zip.Position = 0;
        Assert.Contains("\r\n3 (simulated),2,", await Zips.Text(zip, $"readings-{lesson.Lesson.Id}.csv"), StringComparison.Ordinal);
        Assert.Contains("all readings are simulated", Visible(await Page(lesson, $"/lessons/{lesson.Lesson.Id}/findings")), StringComparison.Ordinal);
        IDocument history = await Page(lesson, "/practicals/magnesium-oxide/history");
        Assert.DoesNotContain("9F", history.QuerySelector("main")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_typed_before_is_kept_and_comes_back_with_the_practical_lesson()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        await device.Tell(Entries.Reading("empty", "23.11"));
        await lesson.Teacher(Acts.Condition, Acts.Conditions.StartedAgain, group: 2);
        await device.Tell(Entries.Reading("empty", "24.56").With("trial", 2));
        await Turn(lesson);
        IDocument page = await device.Page();
        Assert.Equal("3", page.QuerySelector("#now")!.GetAttribute("data-trial"));
        Assert.Equal(["24.56", "23.11"], page.QuerySelectorAll("#sent .value").Select(v => v.TextContent));
        await ReadNext(device);
        await Back(lesson);
        page = await device.Page();
        Assert.Equal("2", page.QuerySelector("#now")!.GetAttribute("data-trial"));
        Assert.Equal("24.56", page.QuerySelector("#sent .value")!.TextContent);
        LessonView view = await (await lesson.Room()).Now(Cancel);
        Assert.Equal([false, false, true], Enumerable.Range(1, 3).Select(view.State.Group(2).IsSimulatedIn));
        Assert.False(view.State.Group(1).IsSimulated);
        // Turned again, what was simulated then is not mixed with what is now.
        await Turn(lesson);
        Assert.Equal("4", (await device.Page()).QuerySelector("#now")!.GetAttribute("data-trial"));
    }

    [Fact]
    public async Task Once_it_has_begun_it_stays_what_it_is()
    {
        await using Taught practical = await Taught.Start();
        await practical.Teacher(Acts.Began);
        Assert.Contains("fault=", await Turn(practical), StringComparison.Ordinal);
        // Nor does an entry that comes another way change it.
        await practical.Teacher(Acts.Cover, LessonState.Yes);
        Assert.False((await (await practical.Room()).Now(Cancel)).State.IsCover);
        Assert.Empty(await practical.Host.Store.CoverLessons(Cancel));

        await using Taught cover = await Taught.Start();
        await Turn(cover);
        await cover.Teacher(Acts.Began);
        Assert.Contains("fault=", await Back(cover), StringComparison.Ordinal);
        await cover.Teacher(Acts.Cover, "no");
        Assert.True((await (await cover.Room()).Now(Cancel)).State.IsCover);
        Assert.Equal([cover.Lesson.Id], await cover.Host.Store.CoverLessons(Cancel));
    }

    [Fact]
    public async Task It_is_open_without_the_check_while_nothing_is_handled_in_it()
    {
        await using Taught lesson = await Taught.Start(signed: false);
        var gate = lesson.Host.Services.GetRequiredService<SafetyGate>();
        Assert.False(await gate.IsOpen(await lesson.Room(), Cancel));
        await Turn(lesson);
        Assert.True(await gate.IsOpen(await lesson.Room(), Cancel));
        await Back(lesson);
        Assert.False(await gate.IsOpen(await lesson.Room(), Cancel));
    }

    [Fact]
    public async Task Lists_call_it_a_cover_lesson()
    {
        await using Taught lesson = await Taught.Start();
        string[] lists = ["/lessons", $"/classes/{lesson.Lesson.ClassId}", $"/lessons/{lesson.Lesson.Id}/live"];
        foreach (string list in lists)
        {
            Assert.DoesNotContain("cover lesson", Visible(await Page(lesson, list)), StringComparison.Ordinal);
        }

        await Turn(lesson);
        foreach (string list in lists)
        {
            Assert.Contains("cover lesson", Visible(await Page(lesson, list)), StringComparison.Ordinal);
        }

        Assert.Contains("Cover lesson", Visible(await Page(lesson, $"/lessons/{lesson.Lesson.Id}/projector")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_papers_are_those_for_whoever_takes_it_and_no_requisition()
    {
        await using Taught lesson = await Taught.Start(signed: false);
        await Turn(lesson);
        string papers = $"/lessons/{lesson.Lesson.Id}/papers";
        IDocument page = await Page(lesson, papers);
        Assert.Equal(
            ["Cover sheet", "Cover questions", "Cover key"], page.QuerySelectorAll("table.papers tbody th").Select(t => t.TextContent));
        Assert.DoesNotContain("DRAFT", page.Body!.TextContent, StringComparison.Ordinal);
        using HttpClient browser = lesson.Host.Browser();
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"{papers}/requisition.html", Cancel)).StatusCode);
        using var zip = new ZipArchive(await browser.GetStreamAsync($"{papers}/papers.zip", Cancel));
        Assert.Equal(6, zip.Entries.Count);
        string sheet = await browser.GetStringAsync($"{papers}/cover-sheet.html", Cancel);
        Assert.Equal(sheet, await browser.GetStringAsync($"{papers}/cover-sheet.html", Cancel));
        Assert.NotEqual(sheet, await browser.GetStringAsync($"{papers}/cover-sheet.html?seed=5", Cancel));
    }

    [Fact]
    public async Task A_new_start_and_a_broken_vessel_are_simulated_too()
    {
        await using Taught lesson = await Taught.Start();
        await Turn(lesson);
        Device device = await lesson.Device(1);
        string first = (await device.Page()).QuerySelector("#now > .place .display")!.TextContent;
        await device.Tell(Entries.Happening(Acts.Condition, Acts.Conditions.Broken).With("trial", 2));
        Assert.Equal(first, (await device.Page()).QuerySelector("#now > .place .display")!.TextContent);
        await lesson.Teacher(Acts.Condition, Acts.Conditions.StartedAgain, group: 1);
        IDocument page = await device.Page();
        Assert.Equal("3", page.QuerySelector("#now")!.GetAttribute("data-trial"));
        Assert.Equal(first, page.QuerySelector("#now > .place .display")!.TextContent);
        await lesson.Teacher(Acts.Condition, Acts.Conditions.AtWork, group: 1);
        Assert.True((await (await lesson.Room()).Now(Cancel)).State.Group(1).IsSimulated);
    }

    [Fact]
    public async Task A_balance_station_shows_the_simulated_balance_of_each_group()
    {
        await using Taught lesson = await Taught.Start();
        await Turn(lesson);
        Device station = await lesson.Device(isStation: true);
        IDocument page = await station.Page("/table?group=3");
        Assert.NotEmpty(page.QuerySelectorAll("[data-group='3'] .display"));
    }

    private static string Visible(IDocument page)
    {
        IElement main = (IElement)page.Body!.Clone();
        foreach (IElement hidden in main.QuerySelectorAll("script, template, .hidden, .projector select").ToArray())
        {
            hidden.Remove();
        }

        return main.TextContent;
    }

    private static async Task<IDocument> Page(Taught lesson, string address)
    {
        using HttpClient browser = lesson.Host.Browser();
        HttpResponseMessage answer = await browser.GetAsync(address, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await TeachersScreen.Parsed(answer);
    }

    private static Task<string> Turn(Taught lesson, bool sure = true) => Post(lesson, "cover", sure ? [("sure", "yes")] : [("other", "x")]);

    private static Task<string> Back(Taught lesson) => Post(lesson, "cover/back", [("other", "x")]);

    private static async Task<string> Post(Taught lesson, string what, (string Name, string Value)[] fields)
    {
        using HttpClient browser = lesson.Host.Browser();
        HttpResponseMessage answer = await browser.PostAsync(
            $"/lessons/{lesson.Lesson.Id}/{what}", new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))), Cancel);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }

    private static async Task<string> ReadNext(Device device)
    {
        IDocument page = await device.Page();
        IElement place = page.QuerySelector("#now > .place")!;
        string what = place.GetAttribute("data-reading")!, shown = place.QuerySelector(".display")!.TextContent;
        int trial = int.Parse(page.QuerySelector("#now")!.GetAttribute("data-trial")!, System.Globalization.CultureInfo.InvariantCulture);
        await device.Tell(Entries.Reading(what, shown.Split(' ')[0], balance: null).With("trial", trial));
        return what;
    }
}
