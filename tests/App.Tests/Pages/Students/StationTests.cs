using AngleSharp.Dom;
using Calx.App.Live;

namespace Calx.App.Tests.Pages.Students;

/// <summary>The balance station: one laptop at a balance, for every group.</summary>
public sealed class StationTests
{
    [Fact]
    public async Task A_station_types_for_the_group_that_it_chooses()
    {
        await using Taught lesson = await Taught.Start();
        Device station = await lesson.Device(isStation: true);
        IDocument page = await station.Page();
        Assert.Equal(4, page.QuerySelectorAll("[data-choose]").Length);
        Assert.Contains("Mass of empty crucible and lid", page.QuerySelector("[data-choose='4']")!.TextContent, StringComparison.Ordinal);
        IElement form = (await station.Page("/table?group=4")).QuerySelector(".way.chosen form.typing")!;
        Assert.StartsWith("/table", (await station.Send(form, ("written", "23.11"), ("balance", "A"))).Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.Equal(4, Assert.Single(await lesson.Journal()).Cell.Group);
        Assert.Contains("magnesium", (await station.Page()).QuerySelector("[data-choose='4']")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_station_shows_nothing_of_what_groups_decide()
    {
        await using Taught lesson = await Taught.Start(decideFirst: false);
        await lesson.Teacher(Acts.Began);
        Device device = await lesson.Device(1);
        await device.Tell(
            Entries.Reading("empty", "23.11"),
            Entries.Reading("before", "23.35"),
            Entries.Reading("after", "23.50"),
            Entries.Happening(Acts.Decided, "reheat"));
        Assert.NotNull((await device.Page()).QuerySelector("#now .advised"));
        IDocument page = await (await lesson.Device(isStation: true)).Page("/table?group=1");
        Assert.Empty(page.QuerySelectorAll(".advised, [data-kind=decide], form[data-what=decided]"));
        Assert.Equal("after2", page.QuerySelector(".way.chosen .place")!.GetAttribute("data-reading"));
    }
}
