using System.Text.Json;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Pages.Practicals;
using Calx.App.Tests.Pages.Teachers;
using Calx.Practicals.Findings;
using Calx.Records.Archive;
using Calx.Records.Storage;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Students;

/// <summary>A group that lost its sample goes on with what a simulated balance shows.</summary>
public sealed class SimulatedTests
{
    [Fact]
    public async Task It_reads_a_display_of_its_own_and_what_it_types_is_called_simulated()
    {
        await using Taught lesson = await Taught.Start();
        (Device device, string shown) = await Simulating(lesson, 2);
        IDocument page = await device.Page();
        Assert.Contains("simulated", page.QuerySelector(".announced")!.TextContent, StringComparison.Ordinal);
        Assert.Matches(@"^\d+\.\d\d g$", shown);
        Assert.Equal("added", (await device.Tell(Reading("empty", shown))).Single().Result);
        page = await device.Page();
        Assert.Equal("simulated", page.QuerySelector("#sent .readings small")!.TextContent);
        Assert.NotEqual("empty", page.QuerySelector("#now > .place")!.GetAttribute("data-reading"));
        Assert.NotEqual(shown, page.QuerySelector(".display")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("#now [name=balance], #now [data-flame]"));
    }

    [Fact]
    public async Task It_decides_on_its_readings_and_has_one_more_to_read_where_it_heats_again()
    {
        await using Taught lesson = await Taught.Start();
        (Device device, _) = await Simulating(lesson, 2);
        var read = new List<string>();
        for (int i = 0; i < 3; i++)
        {
            read.Add(await ReadNext(device));
        }

        Assert.Equal(["empty", "before", "after"], read);
        Assert.Equal("decide", (await device.Page()).QuerySelector("#now > .place")!.GetAttribute("data-kind"));
        await device.Tell(Entries.Happening(Acts.Decided, GroupDecision.Reheat).With("trial", 2));
        Assert.Equal("after2", await ReadNext(device));
    }

    [Fact]
    public async Task The_same_group_gets_the_same_display_and_another_group_another()
    {
        await using Taught lesson = await Taught.Start();
        (_, string second) = await Simulating(lesson, 2);
        (_, string third) = await Simulating(lesson, 3);
        (_, string again) = await Simulating(lesson, 2);
        Assert.Equal(second, again);
        Assert.NotEqual(second, third);
    }

    [Fact]
    public async Task What_was_weighed_before_stays_as_a_start_of_its_own_and_comes_back()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        await device.Tell(Entries.Reading("empty", "23.11"));
        await lesson.Teacher(Acts.Condition, Acts.Conditions.Simulated, group: 2);
        IDocument page = await device.Page();
        Assert.Contains("Start 1, kept", page.QuerySelector("#sent")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("23.11", page.QuerySelector("#sent .value")!.TextContent);
        await lesson.Teacher(Acts.Condition, Acts.Conditions.AtWork, group: 2);
        page = await device.Page();
        Assert.Equal("1", page.QuerySelector("#now")!.GetAttribute("data-trial"));
        Assert.Equal("before", page.QuerySelector("#now [data-reading]")!.GetAttribute("data-reading"));
        Assert.Empty(page.QuerySelectorAll(".display"));
    }

    [Fact]
    public async Task It_is_not_counted_in_the_class_result_even_when_it_has_finished()
    {
        await using Taught lesson = await Taught.Start();
        (Device device, _) = await Simulating(lesson, 2);
        for (int i = 0; i < 3; i++)
        {
            await ReadNext(device);
        }

        await lesson.Teacher(Acts.Condition, Acts.Conditions.Finished, group: 2);
        LessonView view = await Now(lesson);
        Assert.True(view.State.Group(2).IsSimulated);
        Assert.Null(LessonFindings.Of(view, new LetteredBalances([]), causes: false));
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "31.07"), Entries.Reading("before", "31.31"), Entries.Reading("after", "31.47"));
        view = await Now(lesson);
        Assert.Equal("1", Assert.Single(LessonFindings.Of(view, new LetteredBalances([]), causes: false)!.Groups).Readings.Name);
    }

    [Fact]
    public async Task The_findings_name_the_groups_that_are_not_counted_and_the_history_counts_them_as_there()
    {
        await using Taught lesson = await Taught.Start();
        await Simulating(lesson, 2);
        await lesson.Teacher(Acts.Condition, $"{Acts.Conditions.JoinedPrefix}1", group: 3);
        LessonView view = await Now(lesson);
        string[] sentences =
        [
            "Group 2 goes on with simulated readings and is not counted.",
            "Group 3 uses the readings of group 1 and is not counted a second time.",
        ];
        Assert.Equal(sentences, UncountedWords.Of(LessonFindings.Uncounted(view)));
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "31.07"), Entries.Reading("before", "31.31"), Entries.Reading("after", "31.47"));
        ClassFindings findings = LessonFindings.Of(await Now(lesson), new LetteredBalances([]), causes: false)!;
        Assert.All(sentences, s => Assert.Contains(s, findings.Class.Conclusion));
        Assert.All(sentences, s => Assert.Contains(s, findings.Class.Sentences.Select(c => c.WithoutNames)));
        Assert.Equal(3, new HistoryRow(null!, findings).Groups);
    }

    [Fact]
    public async Task An_export_keeps_simulated_readings_marked_and_the_analysis_leaves_them_out()
    {
        await using Taught lesson = await Taught.Start();
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "31.07"), Entries.Reading("before", "31.31"), Entries.Reading("after", "31.47"));
        (Device device, _) = await Simulating(lesson, 2);
        for (int i = 0; i < 3; i++)
        {
            await ReadNext(device);
        }

        using var zip = new MemoryStream();
        await LessonArchive.WriteLesson(
            lesson.Host.Services.GetRequiredService<RecordStore>(), lesson.Lesson.Id, zip, TableNames.Of, TestContext.Current.CancellationToken);
        zip.Position = 0;
        string table = await Zips.Text(zip, $"readings-{lesson.Lesson.Id}.csv");
        Assert.Contains("\r\n2 (simulated),2,", table, StringComparison.Ordinal);
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "lesson.csv"), table);
        Terminal analysed = Terminal.RunIn(folder.FullName, "analyse", "lesson.csv", "--practical", "magnesium-oxide", "--no-causes", "--json");
        JsonElement answer = Schemas.Check("analysis", analysed.Output);
        Assert.Equal(["1"], answer.GetProperty("groups").EnumerateArray().Select(g => g.GetProperty("group").GetString()));
        Assert.False(answer.GetProperty("simulated").GetBoolean());
        Assert.Equal(
            "Group 2 goes on with simulated readings and is not counted.", Assert.Single(answer.GetProperty("notCounted").EnumerateArray()).GetString());
    }

    private static async Task<(Device Device, string Shown)> Simulating(Taught lesson, int group)
    {
        Device device = await lesson.Device(group);
        await lesson.Teacher(Acts.Condition, Acts.Conditions.AtWork, group);
        await lesson.Teacher(Acts.Condition, Acts.Conditions.Simulated, group);
        return (device, (await device.Page()).QuerySelector("#now > .place .display")!.TextContent);
    }

    private static async Task<string> ReadNext(Device device)
    {
        IElement place = (await device.Page()).QuerySelector("#now > .place")!;
        string what = place.GetAttribute("data-reading")!;
        await device.Tell(Reading(what, place.QuerySelector(".display")!.TextContent));
        return what;
    }

    private static JsonObject Reading(string what, string shown) => Entries.Reading(what, shown.Split(' ')[0], balance: null).With("trial", 2);

    private static async Task<LessonView> Now(Taught lesson) => await (await lesson.Room()).Now(TestContext.Current.CancellationToken);
}
