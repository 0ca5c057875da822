using AngleSharp.Dom;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Students;

/// <summary>A group that is told to let it cool and weigh again can do so, on its own page.</summary>
public sealed class WarmTests
{
    [Fact]
    public async Task A_weighing_taken_too_warm_is_typed_again_when_cool_and_the_warm_one_stays_struck_through()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Began);
        Device device = await Warm(lesson);
        Assert.Null((await device.Page()).QuerySelector("#now form[data-warm]"));
        await device.Tell(Entries.Happening(Acts.Decided, GroupDecision.Stop));
        IDocument page = await device.Page();
        Assert.Contains("Let it cool longer and weigh it again", page.QuerySelector("#now .advised")!.TextContent, StringComparison.Ordinal);
        IElement form = page.QuerySelector("#now form[data-warm]")!;
        Assert.StartsWith("/table", (await device.Send(form, ("written", "23.51"))).Headers.Location!.ToString(), StringComparison.Ordinal);

        IElement sent = (await device.Page()).QuerySelectorAll("#sent .readings li")[^1];
        Assert.Equal("23.51", sent.QuerySelector(".value")!.TextContent);
        Assert.Equal("23.39 (weighed again when cool)", sent.QuerySelector("s")!.TextContent);
        JournalEntry kept = (await lesson.Journal())[^1];
        Assert.Equal(("after", "A"), (kept.Cell.What, ((EntryContent.Reading)kept.Content).Balance));
    }

    [Fact]
    public async Task The_phone_that_weighs_again_need_not_be_the_one_that_typed_before()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Began);
        await (await Warm(lesson)).Tell(Entries.Happening(Acts.Decided, GroupDecision.Stop));
        Device other = await lesson.Device(1);
        await other.Send((await other.Page()).QuerySelector("#now form[data-warm]")!, ("written", "23.51"));
        Assert.Equal("23.51", (await other.Page()).QuerySelectorAll("#sent .readings .value")[^1].TextContent);
    }

    /// <summary>0.24 g of magnesium, all burnt, makes 0.40 g; hot air under the pan lifts the crucible by much of the gain, and it was
    /// weighed a minute after the flame was out.</summary>
    private static async Task<Device> Warm(Taught lesson)
    {
        Device device = await lesson.Device(1);
        await device.Tell(Entries.Reading("empty", "23.11"));
        await device.Tell(Entries.Reading("before", "23.35"));
        await device.Tell(Entries.Happening(Acts.FlameOn));
        await device.Tell(Entries.Happening(Acts.FlameOut));
        await device.Tell(Entries.Reading("after", "23.39"));
        return device;
    }
}
