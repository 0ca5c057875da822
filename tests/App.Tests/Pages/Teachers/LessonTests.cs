using AngleSharp.Dom;
using Calx.App.Live;
using Calx.Records;
using Calx.Records.Lessons;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>A lesson from its making to its end.</summary>
public sealed class LessonTests
{
    private static readonly (string Field, string Value, string Expected)[] Faulty =
    [
        ("date", "26.11.2026", "is no day"),
        ("name", "", "Which class?"),
        ("year", "", "school year"),
        ("plan", "?mass=9", "plan has a fault"),
    ];

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_lesson_keeps_the_practical_and_the_plan_as_they_are_and_makes_its_class()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewLesson("?groups=9&minutes=100&mass=0.22&prepared=yes");
        Lesson lesson = Assert.Single(await screen.Host.Store.Lessons(Cancel));
        Assert.Equal((9, 100, "Lab 2", new DateOnly(2026, 11, 26)), (lesson.Groups, lesson.Minutes, lesson.Room, lesson.Date));
        Assert.StartsWith("# Burning magnesium", lesson.PracticalSource, StringComparison.Ordinal);
        Assert.Equal((0.22, true), (PlanSnapshot.Read(lesson.Plan).Mass!.Value, PlanSnapshot.Read(lesson.Plan).Prepared));
        Assert.Equal(new LessonSettings(Assessed: false, DecideFirst: true, Trial: false), lesson.Settings);
        Assert.Equal("9F", Assert.Single(await screen.Host.Store.Classes(Cancel)).Name);
    }

    [Fact]
    public async Task A_second_lesson_of_a_class_named_again_is_of_the_same_class()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewLesson();
        await screen.NewLesson();
        Assert.Single(await screen.Host.Store.Classes(Cancel));
        Assert.Equal(2, (await screen.Host.Store.Lessons(Cancel)).Count);
    }

    [Fact]
    public async Task A_class_that_is_named_anew_is_meant_though_the_list_shows_another()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string known = (await screen.NewClass("9F"))["/classes/".Length..];
        await screen.Send("/lessons", ("practical", "magnesium-oxide"), ("plan", "?groups=4"), ("class", known), ("name", "9G"), ("year", "2026/27"), ("date", "2026-11-26"));
        Lesson lesson = Assert.Single(await screen.Host.Store.Lessons(Cancel));
        Assert.Equal("9G", (await screen.Host.Store.FindClass(lesson.ClassId, Cancel))!.Name);
    }

    [Fact]
    public async Task A_trial_run_has_one_group_and_is_open_before_the_check_is_signed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string address = await screen.NewLesson("?groups=12", trial: true);
        Assert.Equal(1, Assert.Single(await screen.Host.Store.Lessons(Cancel)).Groups);
        Assert.Contains("your own trial run", (await screen.Page(address)).Body!.TextContent, StringComparison.Ordinal);
        Assert.True(await IsOpen(screen, address));
        Assert.False(await IsOpen(screen, await screen.NewLesson()));
    }

    // The file says that it is a demonstration: common practice, no source.
    [Fact]
    public async Task A_lesson_of_a_demonstration_has_one_group_and_takes_no_more()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        (string, string)[] fields = [("practical", "zinc-chloride"), ("name", "9F"), ("year", "2026/27"), ("date", "2026-11-26"), ("room", "Lab 2")];
        IDocument refused = await TeachersScreen.Parsed(await screen.Post("/lessons", [.. fields, ("plan", "?groups=4")]));
        Assert.Contains("plan has a fault", TeachersScreen.Faults(refused), StringComparison.Ordinal);
        string address = await screen.Send("/lessons", [.. fields, ("plan", "")]);
        Assert.Equal(1, Assert.Single(await screen.Host.Store.Lessons(Cancel)).Groups);
        Assert.Null((await screen.Page($"{address}/live")).QuerySelector(".addgroup"));
        Assert.NotNull((await screen.Page($"{await screen.NewLesson()}/live")).QuerySelector(".addgroup"));
    }

    [Fact]
    public async Task What_is_missing_or_wrong_is_said_and_what_was_filled_in_stays()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        foreach ((string field, string value, string expected) in Faulty)
        {
            var fields = new Dictionary<string, string>(StringComparer.Ordinal)
            {
                ["practical"] = "magnesium-oxide", ["plan"] = "?groups=4", ["name"] = "9F", ["year"] = "2026/27", ["date"] = "2026-11-26", ["room"] = "Lab 2",
            };
            fields[field] = value;
            IDocument page = await TeachersScreen.Parsed(await screen.Post("/lessons", [.. fields.Select(f => (f.Key, f.Value))]));
            Assert.Contains(expected, TeachersScreen.Faults(page), StringComparison.Ordinal);
            Assert.Equal("Lab 2", page.QuerySelector("input[name=room]")!.GetAttribute("value"));
        }

        Assert.Empty(await screen.Host.Store.Lessons(Cancel));
    }

    [Fact]
    public async Task Present_late_and_away_are_one_tap_each_and_stand_in_the_journal()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", "Ada", "Ben", "Cleo");
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/members/2", ("presence", "late"));
        IDocument page = await screen.After($"{lesson}/members/3", ("presence", "away"));
        Assert.Equal(["present", "late", "away"], page.QuerySelectorAll("[aria-pressed=true]").Select(b => b.GetAttribute("value")));
        await screen.Send($"{lesson}/members/3", ("presence", "present"));
        Assert.Equal(3, (await Entries(screen, lesson)).Count(e => e.Entry.Cell.What == Acts.Presence));
    }

    [Fact]
    public async Task What_is_neither_presence_nor_a_group_is_refused_with_a_sentence()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", "Ada");
        string lesson = await screen.NewLesson("?groups=4");
        foreach ((string, string) sent in ((string, string)[])[("presence", "asleep"), ("group", "5"), ("group", "-1"), ("group", "one")])
        {
            Assert.NotEmpty(TeachersScreen.Faults(await screen.After($"{lesson}/members/1", sent)));
        }

        Assert.Empty(await Entries(screen, lesson));
    }

    [Fact]
    public async Task Groups_that_are_made_are_put_elsewhere_by_one_tap_only_after_a_question()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", "Ada", "Ben");
        string lesson = await screen.NewLesson("?groups=4");
        Assert.All((await screen.Page(lesson)).QuerySelectorAll($"form[action='{lesson}/groups']"), f => Assert.Null(f.GetAttribute("data-ask")));
        IElement[] ways = [.. (await screen.After($"{lesson}/members/1", ("group", "2"))).QuerySelectorAll($"form[action='{lesson}/groups']")];
        Assert.Equal(3, ways.Length);
        Assert.All(ways, f => Assert.Contains("everybody", f.GetAttribute("data-ask"), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("in-order")]
    [InlineData("drawn")]
    public async Task Who_is_here_is_spread_over_the_groups_evenly(string way)
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", [.. Enumerable.Range(1, 9).Select(n => $"M{n}")]);
        string lesson = await screen.NewLesson("?groups=4");
        await screen.Send($"{lesson}/members/9", ("presence", "away"));
        IDocument page = await screen.After($"{lesson}/groups", ("way", way));
        string[] groups = [.. page.QuerySelectorAll("select[name=group] option[selected]").Select(o => o.GetAttribute("value")!)];
        Assert.Equal("0", groups[8]);
        Assert.Equal([2, 2, 2, 2], groups[..8].GroupBy(g => g).Select(g => g.Count()));
        if (way == "in-order")
        {
            Assert.Equal(["1", "1", "2", "2", "3", "3", "4", "4"], groups[..8]);
        }

        IDocument none = await screen.After($"{lesson}/groups", ("way", "none"));
        Assert.All(none.QuerySelectorAll("select[name=group] option[selected]"), o => Assert.Equal("0", o.GetAttribute("value")));
    }

    [Fact]
    public async Task The_door_shows_codes_that_let_devices_in_until_it_is_closed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        IDocument page = await screen.After($"{lesson}/door");
        LessonDoor door = (await screen.Host.Store.DoorOf(IdOf(lesson), Cancel))!;
        string text = page.Body!.TextContent;
        Assert.Contains($"{door.Code[..3]} {door.Code[3..]}", text, StringComparison.Ordinal);
        Assert.Contains("open on this machine only", text, StringComparison.Ordinal);
        Assert.Contains("not signed", text, StringComparison.Ordinal);
        await screen.Send($"{lesson}/door/close");
        Assert.Null(await screen.Host.Store.FindDoor(door.Code, Cancel));
        Assert.Contains("closed", TeachersScreen.Faults(await screen.Page((await screen.Browser.GetAsync($"{lesson}/door", Cancel)).Headers.Location!.ToString())), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_stations_code_stands_on_the_lessons_page_and_never_on_the_one_that_is_projected()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        IDocument projected = await screen.After($"{lesson}/door");
        LessonDoor door = (await screen.Host.Store.DoorOf(IdOf(lesson), Cancel))!;
        string letters = string.Concat(projected.DocumentElement.OuterHtml.Where(char.IsLetter));
        Assert.DoesNotContain(door.StationCode, letters, StringComparison.OrdinalIgnoreCase);
        Assert.NotNull(projected.QuerySelector($"a[href='{lesson}#station']"));
        IElement station = (await screen.Page(lesson)).QuerySelector("details#station")!;
        Assert.Contains($"{door.StationCode[..4]} {door.StationCode[4..]}", station.TextContent, StringComparison.Ordinal);
        Assert.False(station.HasAttribute("open"));
        await screen.Send($"{lesson}/door/close");
        Assert.Null((await screen.Page(lesson)).QuerySelector("#station"));
    }

    [Fact]
    public async Task Ending_a_lesson_closes_its_door_and_keeps_it_closed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/door");
        IDocument page = await screen.After($"{lesson}/end");
        Assert.Contains("This lesson is over", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.False((await screen.Host.Store.DoorOf(IdOf(lesson), Cancel))!.IsOpen);
        Assert.Contains("over", TeachersScreen.Faults(await screen.After($"{lesson}/door")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settings_can_be_changed_and_what_they_were_stays_in_the_audit()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/settings", ("date", "2026-12-01"), ("room", "Lab 5"), ("assessed", "yes"));
        Lesson kept = (await screen.Host.Store.FindLesson(IdOf(lesson), Cancel))!;
        Assert.Equal((new DateOnly(2026, 12, 1), "Lab 5", true, false), (kept.Date, kept.Room, kept.Settings.Assessed, kept.Settings.DecideFirst));
        Assert.Contains("Lab 2", (await screen.Host.Store.Audit(1, Cancel))[0].Before!, StringComparison.Ordinal);
        Assert.Contains("is no day", TeachersScreen.Faults(await screen.After($"{lesson}/settings", ("date", "soon"))), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lesson_is_deleted_only_where_the_class_was_typed_and_after_an_export_from_which_it_comes_back()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/sign", ("checked", "yes"), ("initials", "LM"));
        Assert.NotEmpty(TeachersScreen.Faults(await screen.After($"{lesson}/delete", ("typed", "10G"))));
        Assert.Single(await screen.Host.Store.Lessons(Cancel));
        IDocument gone = await screen.After($"{lesson}/delete", ("typed", "9F"));
        Assert.Contains("is deleted", gone.QuerySelector(".done")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(await screen.Host.Store.Lessons(Cancel));
        string export = Assert.Single(Directory.GetFiles(Path.Combine(screen.Host.DataFolder, "exports"), "*.zip"));
        await RecordsTests.Import(screen, await File.ReadAllBytesAsync(export, Cancel));
        Assert.Equal(IdOf(lesson), Assert.Single(await screen.Host.Store.Lessons(Cancel)).Id);
    }

    private static RecordId IdOf(string address) => RecordId.Parse(address["/lessons/".Length..]);

    private static Task<IReadOnlyList<Records.Journal.KeptEntry>> Entries(TeachersScreen screen, string lesson) =>
        screen.Host.Store.Entries(IdOf(lesson), 0, Cancel);

    private static async Task<bool> IsOpen(TeachersScreen screen, string lesson)
    {
        LessonRoom room = (await screen.Host.Services.GetRequiredService<LessonRooms>().Find(IdOf(lesson), Cancel))!;
        return await screen.Host.Services.GetRequiredService<SafetyGate>().IsOpen(room, Cancel);
    }
}
