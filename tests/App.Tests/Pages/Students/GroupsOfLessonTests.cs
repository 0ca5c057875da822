using AngleSharp.Dom;
using Calx.App.Live;

namespace Calx.App.Tests.Pages.Students;

/// <summary>A class has more groups or fewer than its plan.</summary>
public sealed class GroupsOfLessonTests
{
    [Fact]
    public async Task A_group_that_was_added_can_be_taken_and_typed_for()
    {
        await using Taught lesson = await Taught.Start();
        Device early = await lesson.Device();
        Assert.Equal(4, (await early.Page("/groups")).QuerySelectorAll("button[name=group]").Length);
        await lesson.Teacher(Acts.GroupAdded);
        Device device = await lesson.Device(5);
        Assert.Equal("added", (await device.Tell(Entries.Reading("empty", "23.11"))).Single().Result);
        IDocument page = await device.Page();
        Assert.Equal("23.11", page.QuerySelector("#sent .value")!.TextContent);
        Assert.Equal(5, (await early.Page("/groups")).QuerySelectorAll("button[name=group]").Length);
        Assert.Equal("refused", (await device.Tell(Entries.Reading("empty", "23.11").With("group", 6))).Single().Result);
    }

    [Fact]
    public async Task A_group_in_which_nobody_is_comes_back_with_its_first_reading()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Condition, Acts.Conditions.Absent, group: 4);
        Device device = await lesson.Device(4);
        Assert.Equal("end", (await device.Page()).QuerySelector("#now > .place")!.GetAttribute("data-kind"));
        await device.Tell(Entries.Reading("empty", "23.11"));
        Assert.Equal("before", (await device.Page()).QuerySelector("#now [data-reading]")!.GetAttribute("data-reading"));
    }
}
