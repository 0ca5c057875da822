using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Pages.Students;

namespace Calx.App.Tests.Pages.Students;

/// <summary>How a device comes into a lesson and takes a group.</summary>
public sealed class JoinTests
{
    [Theory]
    [InlineData("bcdfgh", "BCDFGH")]
    [InlineData(" BCD-FGH ", "BCDFGH")]
    [InlineData("8cd f6h", "BCDFGH")]
    [InlineData("52<script>", "SZSCRIPT")]
    [InlineData("", "")]
    public void A_code_is_read_whatever_case_blanks_and_look_alikes_it_is_typed_with(string typed, string code) => Assert.Equal(code, JoinCode.Of(typed));

    [Fact]
    public async Task A_device_joins_with_the_code_in_small_letters_and_takes_a_group()
    {
        await using Taught lesson = await Taught.Start();
        var device = new Device(lesson.Host.Browser());
        string typed = $"{lesson.Door.Code[..3]} {lesson.Door.Code[3..]}".ToLowerInvariant();
        HttpResponseMessage joined = await device.Send("/join", ("code", typed));
        Assert.Equal("/groups", joined.Headers.Location!.ToString());
        IDocument groups = await device.Page("/groups");
        Assert.Equal(["1", "2", "3", "4"], groups.QuerySelectorAll("button[name=group]").Select(b => b.GetAttribute("value")));
        Assert.Equal("/table", (await device.Send("/groups", ("group", "3"))).Headers.Location!.ToString());
        Assert.Contains("Group 3", (await device.Page()).QuerySelector(".who")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_link_in_the_picture_of_the_code_joins_too_and_leaves_a_device_in_its_group()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        HttpResponseMessage again = await device.Get($"/j/{lesson.Door.Code}");
        Assert.Equal("/table", again.Headers.Location!.ToString());
    }

    [Fact]
    public async Task A_wrong_code_is_told_in_a_sentence_and_guessing_is_slowed_down()
    {
        await using Taught lesson = await Taught.Start();
        var device = new Device(lesson.Host.Browser());
        HttpResponseMessage wrong = await device.Send("/join", ("code", "<b>BBBBBB"));
        Assert.Equal(HttpStatusCode.NotFound, wrong.StatusCode);
        IDocument page = (await Device.Parsed(wrong));
        Assert.Contains("No lesson is open under that code", page.QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("<b>BBBBBB", page.QuerySelector("#code")!.GetAttribute("value"));
        for (int i = 0; i < 9; i++)
        {
            await device.Get("/j/CCCCCC");
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, (await device.Send("/join", ("code", lesson.Door.Code))).StatusCode);
    }

    [Fact]
    public async Task A_closed_door_lets_nobody_in_and_those_who_are_in_still_read_their_table()
    {
        await using Taught lesson = await Taught.Start();
        Device inside = await lesson.Device(1);
        await lesson.Host.Store.CloseDoor(lesson.Lesson.Id, "teacher", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, (await new Device(lesson.Host.Browser()).Send("/join", ("code", lesson.Door.Code))).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await inside.Get("/table")).StatusCode);
    }

    [Fact]
    public async Task A_device_changes_its_group_until_it_has_typed_something_and_again_once_the_teacher_frees_it()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        await device.Send("/groups", ("group", "2"));
        IDocument groups = await device.Page("/groups");
        Assert.Equal(["free", "this device", "free", "free"], groups.QuerySelectorAll("button[name=group] small").Select(s => s.TextContent));
        await device.Tell(Entries.Reading("empty", "23.11"));
        Assert.Equal(HttpStatusCode.Conflict, (await device.Send("/groups", ("group", "3"))).StatusCode);
        Assert.Contains("Group 2", (await device.Page()).QuerySelector(".who")!.TextContent, StringComparison.Ordinal);
        await lesson.Teacher(Acts.DevicesFreed, group: 2);
        Assert.Equal("/table", (await device.Send("/groups", ("group", "3"))).Headers.Location!.ToString());
        Assert.Contains("Group 3", (await device.Page()).QuerySelector(".who")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("5")]
    [InlineData("-1")]
    [InlineData("2; 3")]
    [InlineData("")]
    public async Task A_group_that_the_lesson_does_not_have_is_not_taken(string group)
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device();
        Assert.Equal(HttpStatusCode.Conflict, (await device.Send("/groups", ("group", group))).StatusCode);
        Assert.Equal("/groups", (await device.Get("/table")).Headers.Location!.ToString());
    }

    [Fact]
    public async Task Leaving_gives_the_place_up()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(1);
        Assert.Equal("/join", (await device.Send("/table/leave")).Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.Redirect, (await device.Get("/table")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await device.Post(Entries.Reading("empty", "23.11"))).StatusCode);
    }
}
