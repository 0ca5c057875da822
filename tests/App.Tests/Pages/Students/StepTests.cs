using AngleSharp.Dom;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Students;

/// <summary>What a group's page puts before the group.</summary>
public sealed class StepTests
{
    [Fact]
    public async Task The_way_to_the_end_is_on_the_page_so_that_it_goes_on_without_a_connection()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        IElement[] places = [.. (await device.Page()).QuerySelectorAll("#now > .place")];
        Assert.Equal(["empty", "before", "after", "after2", "after3"], places.Select(p => p.GetAttribute("data-reading")).OfType<string>());
        Assert.Equal("end", places[^1].GetAttribute("data-kind"));
        // After each weighing but the last the group decides; a flame burns before each, and what it heated cools: never for less
        // than the least time of the step at which it does, 10 min in the practical's file.
        string[] kinds = [.. places.Select(p => p.GetAttribute("data-reading") ?? p.GetAttribute("data-kind")!)];
        Assert.Equal("decide", kinds[Array.IndexOf(kinds, "after") + 1]);
        Assert.Equal("decide", kinds[Array.IndexOf(kinds, "after2") + 1]);
        Assert.NotEqual("decide", kinds[Array.IndexOf(kinds, "after3") + 1]);
        Assert.All(places.Where(p => p.GetAttribute("data-reading") is "after" or "after2"), p => Assert.InRange(Number(p, "data-cooling"), 10, 60));
    }

    [Fact]
    public async Task The_page_goes_on_with_what_the_group_sends()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Began);
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"));
        Assert.Equal("before", await PresentReading(device));
        await device.Tell(Entries.Reading("before", "23.35"));
        await device.Tell(Entries.Happening(Acts.FlameOn));
        Assert.Equal("yes", (await device.Page()).QuerySelector("#now")!.GetAttribute("data-lit"));
        await device.Tell(Entries.Happening(Acts.FlameOut));
        IElement now = (await device.Page()).QuerySelector("#now")!;
        Assert.Equal("no", now.GetAttribute("data-lit"));
        Assert.Equal("cool", now.QuerySelector(".place")!.GetAttribute("data-step"));
        Assert.True(Number(now, "data-cool") > DateTimeOffset.UtcNow.AddMinutes(9).ToUnixTimeMilliseconds(), "The countdown ends too early.");
    }

    [Fact]
    public async Task A_flame_that_was_not_out_after_all_brings_the_group_back_to_the_step_where_it_was()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Began);
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"));
        await device.Tell(Entries.Reading("before", "23.35"));
        await device.Tell(Entries.Happening(Acts.AtStep, "gentle-start"));
        await device.Tell(Entries.Happening(Acts.FlameOn));
        await device.Tell(Entries.Happening(Acts.FlameOut));
        IElement cooling = (await device.Page()).QuerySelector("#now > .place")!;
        Assert.Equal("cool", cooling.GetAttribute("data-step"));
        IElement back = cooling.QuerySelector("form[data-what=flame-on]")!;
        Assert.Equal("We are still heating", back.TextContent.Trim());
        await device.Send(back);
        IElement now = (await device.Page()).QuerySelector("#now")!;
        Assert.Equal(("gentle-start", "yes"), (now.QuerySelector(".place")!.GetAttribute("data-step"), now.GetAttribute("data-lit")));
        Assert.Null(now.GetAttribute("data-cool"));
    }

    [Fact]
    public async Task A_group_decides_before_it_reads_what_its_weighings_say()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Began);
        Device device = await Weighed(lesson);
        IElement place = (await device.Page()).QuerySelector("#now > .place")!;
        Assert.Equal("decide", place.GetAttribute("data-kind"));
        string asked = place.QuerySelector(".big")!.TextContent;
        Assert.Contains("Decide in your group", asked, StringComparison.Ordinal);
        await device.Tell(Entries.Happening(Acts.Decided, "stop"));
        string advised = (await device.Page()).QuerySelector("#now .advised")!.TextContent;
        Assert.DoesNotContain("Decide in your group", advised, StringComparison.Ordinal);
        Assert.DoesNotContain(advised, char.IsAsciiDigit);
    }

    [Fact]
    public async Task An_assessed_lesson_shows_no_hint_no_question_and_no_decision()
    {
        await using Taught lesson = await Taught.Start(assessed: true);
        await lesson.Teacher(Acts.Began);
        Device device = await Weighed(lesson);
        IDocument page = await device.Page();
        Assert.Equal("yes", page.QuerySelector("#table")!.GetAttribute("data-assessed"));
        Assert.Equal("What do you do next?", page.QuerySelector("#now > .place h1")!.TextContent);
        Assert.Null(page.QuerySelector("#now > .place .big"));
        await device.Tell(Entries.Happening(Acts.Decided, "stop"));
        Assert.Null((await device.Page()).QuerySelector("#now .advised"));
    }

    [Fact]
    public async Task A_danger_that_is_ticked_fills_the_page_also_when_assessed()
    {
        await using Taught lesson = await Taught.Start(assessed: true);
        Device device = await lesson.Device(1);
        Assert.Null((await device.Page()).QuerySelector("#live .tell"));
        await device.Tell(Entries.Observation("cracked"));
        Assert.Contains("Tell your teacher now.", (await device.Page()).QuerySelector("#live .fill.tell")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_teachers_stop_fills_the_page_until_work_goes_on()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        await lesson.Teacher(Acts.Stop);
        Assert.Equal("Gas off.Stand still.Look at me.", (await device.Page()).QuerySelector(".fill.stop")!.TextContent);
        await lesson.Teacher(Acts.Resume);
        Assert.Null((await device.Page()).QuerySelector(".fill.stop"));
    }

    [Fact]
    public async Task What_only_the_teacher_may_look_for_is_not_on_the_page()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        string html = await Device.Text(await device.Get("/table"));
        Assert.Contains("smoke-seen", html, StringComparison.Ordinal);
        Assert.DoesNotContain("ammonia-smell", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_group_that_joined_another_reads_its_readings_marked_as_such()
    {
        await using Taught lesson = await Taught.Start();
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "31.07"));
        Device device = await lesson.Device(2);
        Assert.DoesNotContain("31.07", (await device.Page()).Body!.TextContent, StringComparison.Ordinal);
        await lesson.Teacher(Acts.Condition, "joined:1", group: 2);
        IDocument page = await device.Page();
        Assert.Contains("group 1's", page.QuerySelector("#sent .readings li")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("31.07", page.QuerySelector("#sent")!.TextContent, StringComparison.Ordinal);
        Assert.Empty(page.QuerySelectorAll("#now [data-reading]"));
    }

    [Fact]
    public async Task A_broken_vessel_sends_the_group_to_the_teacher()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        Assert.Equal("added", (await device.Tell(Entries.Happening(Acts.Condition, Acts.Conditions.Broken))).Single().Result);
        Assert.Equal("Gas off, and wait for your teacher", (await device.Page()).QuerySelector("#now h1")!.TextContent);
        await lesson.Teacher(Acts.Condition, Acts.Conditions.StartedAgain, group: 2);
        Assert.Equal("2", (await device.Page()).QuerySelector("#now")!.GetAttribute("data-trial"));
    }

    [Fact]
    public async Task A_group_is_told_to_wait_until_the_teacher_starts_the_work()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        const string wait = "your teacher starts the work";
        Assert.Contains(wait, (await device.Page()).QuerySelector("#now")!.TextContent, StringComparison.Ordinal);
        await lesson.Teacher(Acts.Began);
        IElement together = (await device.Page()).QuerySelector("#now")!;
        Assert.Contains(wait, together.TextContent, StringComparison.Ordinal);
        Assert.Equal("arrive", together.QuerySelector(".place")!.GetAttribute("data-step"));
        await lesson.Teacher(Acts.WorkBegan);
        IElement working = (await device.Page()).QuerySelector("#now")!;
        Assert.DoesNotContain(wait, working.TextContent, StringComparison.Ordinal);
        Assert.NotEqual("arrive", working.QuerySelector(".place")!.GetAttribute("data-step"));
    }

    [Fact]
    public async Task A_lesson_that_is_over_says_so_and_stays_readable()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        await device.Tell(Entries.Reading("empty", "23.11"));
        await lesson.Teacher(Acts.Ended);
        IDocument page = await device.Page();
        Assert.Contains("This lesson is over", page.QuerySelector(".announced")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("23.11", page.QuerySelector("#sent .value")!.TextContent);
        Assert.Empty(page.QuerySelectorAll("#now form"));
    }

    private static double Number(IElement element, string attribute) =>
        double.Parse(element.GetAttribute(attribute)!, System.Globalization.CultureInfo.InvariantCulture);

    private static async Task<Device> Weighed(Taught lesson)
    {
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"), Entries.Reading("before", "23.35"), Entries.Reading("after", "23.50"));
        return device;
    }

    private static async Task<string?> PresentReading(Device device) =>
        (await device.Page()).QuerySelector("#now > .place")!.GetAttribute("data-reading");
}
