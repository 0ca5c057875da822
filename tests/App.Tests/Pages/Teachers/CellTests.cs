using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.App.Tests.Pages.Students;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>One cell of the table: what counts, what was typed beside it, and the teacher's word on it.</summary>
public sealed class CellTests
{
    [Fact]
    public async Task A_correction_of_a_cell_with_two_readings_is_what_counts_and_the_other_is_set_aside_with_the_reason()
    {
        await using Taught lesson = await Taught.Start();
        await TwoReadings(lesson);
        var teacher = new Device(lesson.Host.Browser());
        IDocument page = await teacher.Page(Cell(lesson));
        Assert.Contains("Several devices typed different readings here", page.QuerySelector(".warn")!.TextContent, StringComparison.Ordinal);
        await teacher.Send(Correction(page), ("written", "27.64"), ("reason", "the paper record says so"));

        page = await teacher.Page(Cell(lesson));
        Assert.Equal("27.64 g", page.QuerySelector(".figures dd")!.TextContent.Trim());
        Assert.Equal(["27.63", "26.63"], page.QuerySelectorAll("table s").Select(s => s.TextContent.Trim()));
        Assert.Contains("replaced by 27.64: the paper record says so", page.QuerySelector("table")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("set aside: the paper record says so", page.QuerySelector("table")!.TextContent, StringComparison.Ordinal);
        Assert.Null(page.QuerySelector(".warn"));
        IDocument group = await teacher.Page($"/lessons/{lesson.Lesson.Id}/groups/1");
        Assert.DoesNotContain("two readings", group.Body!.TextContent, StringComparison.Ordinal);
        // The words that set it aside are no note of the group's.
        Assert.DoesNotContain("Set aside", group.Body.TextContent, StringComparison.Ordinal);
        Assert.Equal("27.64", Counting(await lesson.Room()));
        // A second correction of that one counts as well.
        await teacher.Send(Correction(page), ("written", "27.65"), ("reason", "misread"));
        Assert.Equal("27.65", Counting(await lesson.Room()));
    }

    [Fact]
    public async Task This_one_counts_settles_the_cell_whichever_is_meant()
    {
        await using Taught lesson = await Taught.Start();
        await TwoReadings(lesson);
        var teacher = new Device(lesson.Host.Browser());
        IElement[] choices = [.. (await teacher.Page(Cell(lesson))).QuerySelectorAll("form.counts")];
        Assert.Equal(2, choices.Length);
        await teacher.Send(choices[1], ("reason", ""));
        Assert.Equal("27.63", Counting(await lesson.Room()));
        await teacher.Send(choices[1], ("reason", "the paper record says so"));
        await teacher.Send(choices[1], ("reason", "the paper record says so"));
        LessonView view = await (await lesson.Room()).Now(CancellationToken.None);
        CellState cell = view.Cell(1, "empty")!;
        Assert.Equal(("26.63", false, 3), (Counting(view), cell.IsContested, cell.History.Count));
        // What was set aside can be what counts after all: it is said again, and nothing is taken out.
        IElement back = (await teacher.Page(Cell(lesson))).QuerySelector("form.counts")!;
        await teacher.Send(back, ("reason", "the display shows it"));
        Assert.Equal("27.63", Counting(await lesson.Room()));
        Assert.False((await (await lesson.Room()).Now(CancellationToken.None)).Cell(1, "empty")!.IsContested);
    }

    [Fact]
    public async Task A_reading_that_comes_after_the_decision_stands_beside_it()
    {
        await using Taught lesson = await Taught.Start();
        await TwoReadings(lesson);
        var teacher = new Device(lesson.Host.Browser());
        await teacher.Send(Correction(await teacher.Page(Cell(lesson))), ("written", "27.64"), ("reason", "misread"));
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "27.99"));
        CellState cell = (await (await lesson.Room()).Now(CancellationToken.None)).Cell(1, "empty")!;
        Assert.Equal(("27.64", true), (Counting(await lesson.Room()), cell.IsContested));
    }

    [Fact]
    public async Task What_one_device_sent_twice_is_called_that()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "72.87"));
        await device.Tell(Entries.Reading("empty", "72.87"));
        var teacher = new Device(lesson.Host.Browser());
        IDocument page = await teacher.Page(Cell(lesson));
        Assert.Null(page.QuerySelector(".warn"));
        Assert.Contains("the same once more", page.QuerySelector("table")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("two readings", (await teacher.Page($"/lessons/{lesson.Lesson.Id}/groups/1")).Body!.TextContent, StringComparison.Ordinal);
        Assert.Null((await device.Page()).QuerySelector("#sent .fault"));
        await device.Tell(Entries.Reading("empty", "72.78"));
        Assert.DoesNotContain("Several devices", (await teacher.Page(Cell(lesson))).QuerySelector(".warn")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("This was sent more than once: 72.78 as well", (await device.Page()).QuerySelector("#sent .fault")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_typed_on_a_page_without_script_was_typed_when_it_came()
    {
        await using Taught lesson = await Taught.Start();
        DateTimeOffset before = DateTimeOffset.UtcNow;
        await TwoReadings(lesson);
        var teacher = new Device(lesson.Host.Browser());
        IElement form = Correction(await teacher.Page(Cell(lesson)));
        HttpResponseMessage once = await teacher.Send(form, ("written", "27.64"), ("reason", "misread"));
        HttpResponseMessage twice = await teacher.Send(form, ("written", "27.64"), ("reason", "misread"));
        Assert.Equal(once.Headers.Location, twice.Headers.Location);
        IReadOnlyList<KeptEntry> kept = await lesson.Host.Store.Entries(lesson.Lesson.Id, 0, CancellationToken.None);
        Assert.Contains(kept, k => k.Entry.Cell.What == Acts.DeviceIn);
        Assert.Equal(2, kept.Count(k => k.Entry.Device == Visitor.TeachersDevice));
        Assert.All(kept, k => Assert.InRange(k.Entry.TypedAt, before.AddSeconds(-1), DateTimeOffset.UtcNow));
    }

    [Fact]
    public async Task A_number_with_other_decimals_than_its_balance_is_asked_about_and_one_more_press_keeps_it()
    {
        await using Taught lesson = await Taught.Start();
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "27.63"));
        var teacher = new Device(lesson.Host.Browser());
        IElement form = Correction(await teacher.Page(Cell(lesson)));
        string asking = (await teacher.Send(form, ("written", "27.9"), ("reason", "misread"))).Headers.Location!.ToString();
        IDocument page = await teacher.Page(asking);
        Assert.StartsWith("Balance A shows two decimals: 27.90?", page.QuerySelector(".fault")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("27.63", Counting(await lesson.Room()));
        Assert.Equal(("27.9", "misread"), (page.QuerySelector("#written")!.GetAttribute("value"), page.QuerySelector("#reason")!.GetAttribute("value")));
        await teacher.Send(Correction(page), ("written", "27.9"), ("reason", "misread"));
        Assert.Equal("27.9", Counting(await lesson.Room()));
    }

    [Fact]
    public async Task The_table_without_script_asks_the_same_and_loses_nothing_that_was_typed()
    {
        await using Taught lesson = await Taught.Start();
        var teacher = new Device(lesson.Host.Browser());
        string grid = $"/lessons/{lesson.Lesson.Id}/grid";
        HttpResponseMessage asked = await teacher.Send(grid, ("b.1", "A"), ("r.1.1.empty", "28.0"), ("b.2", "A"), ("r.2.1.empty", "28.10"));
        IDocument page = await Device.Parsed(asked);
        Assert.Contains("Balance A shows two decimals: 28.00?", page.QuerySelector(".fault")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("28.0", page.QuerySelector("[name='r.1.1.empty']")!.GetAttribute("value"));
        Assert.Equal("28.10", ((EntryContent.Reading)Assert.Single(await lesson.Journal()).Content).Written.ToString());
        await teacher.Send(grid, ("b.1", "A"), ("r.1.1.empty", "28.0"), ("sure.r.1.1.empty", page.QuerySelector("[name='sure.r.1.1.empty']")!.GetAttribute("value")!));
        Assert.Equal("28.0", Counting(await lesson.Room()));
    }

    private static string Cell(Taught lesson) => $"/lessons/{lesson.Lesson.Id}/groups/1/cells/1/empty";

    private static IElement Correction(IDocument page) => page.QuerySelector("form:has(#written)")!;

    private static async Task TwoReadings(Taught lesson)
    {
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "27.63"));
        await (await lesson.Device(1)).Tell(Entries.Reading("empty", "26.63"));
    }

    private static string Counting(LessonRoom room) => Counting(room.Now(CancellationToken.None).GetAwaiter().GetResult());

    private static string Counting(LessonView view) => ((EntryContent.Reading)view.Reading(1, "empty")!.Entry.Content).Written.ToString();
}
