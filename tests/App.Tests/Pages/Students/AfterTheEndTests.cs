using System.Globalization;
using System.Net;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.Records.Lessons;

namespace Calx.App.Tests.Pages.Students;

/// <summary>What the end of a lesson means for devices: none comes in any more, and those that are in send only what waited.</summary>
public sealed class AfterTheEndTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Ending_the_lesson_from_the_live_view_ends_both_codes(bool isStation)
    {
        await using Taught lesson = await Taught.Start();
        string code = isStation ? lesson.Door.StationCode : lesson.Door.Code;
        await TeacherTaps(lesson, Acts.Ended);
        var device = new Device(lesson.Host.Browser());
        HttpResponseMessage joined = await device.Send("/join", ("code", code));
        Assert.Equal(HttpStatusCode.NotFound, joined.StatusCode);
        Assert.Contains("its code ends too", await Device.Text(joined), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await device.Get($"/j/{code}")).StatusCode);
        Assert.False((await lesson.Host.Store.DoorOf(lesson.Lesson.Id, Cancel))!.IsOpen);
    }

    [Fact]
    public async Task A_lesson_that_ended_lets_nobody_in_even_where_its_door_was_left_open_in_the_records()
    {
        await using Taught lesson = await Taught.Start();
        await lesson.Teacher(Acts.Ended);
        Assert.True((await lesson.Host.Store.DoorOf(lesson.Lesson.Id, Cancel))!.IsOpen);
        Assert.Equal(HttpStatusCode.NotFound, (await new Device(lesson.Host.Browser()).Send("/join", ("code", lesson.Door.Code))).StatusCode);
    }

    [Fact]
    public async Task A_lesson_taken_up_again_opens_its_door_with_new_codes()
    {
        await using Taught lesson = await Taught.Start();
        await TeacherTaps(lesson, Acts.Ended);
        await TeacherTaps(lesson, Acts.Reopened);
        await new Device(lesson.Host.Browser()).Send($"/lessons/{lesson.Lesson.Id}/door");
        LessonDoor again = (await lesson.Host.Store.DoorOf(lesson.Lesson.Id, Cancel))!;
        Assert.NotEqual(lesson.Door.Code, again.Code);
        Assert.Equal("/groups", (await new Device(lesson.Host.Browser()).Send("/join", ("code", again.Code))).Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.NotFound, (await new Device(lesson.Host.Browser()).Send("/join", ("code", lesson.Door.Code))).StatusCode);
    }

    [Fact]
    public async Task What_waited_on_a_device_is_taken_after_the_end_and_what_is_typed_then_is_not()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        JsonObject waiting = At(Entries.Reading("empty", "23.11"), TimeSpan.FromMinutes(-4));
        await TeacherTaps(lesson, Acts.Ended);
        JsonObject late = At(Entries.Reading("before", "23.35"), TimeSpan.FromSeconds(2));
        var results = await device.Tell(waiting, late, At(Entries.Happening(Acts.Help), TimeSpan.FromSeconds(2)));
        Assert.Equal(["added", "refused", "refused"], results.Select(r => r.Result));
        Assert.StartsWith("Your teacher ended this lesson at ", results[1].Reason, StringComparison.Ordinal);
        Assert.Equal("empty", Assert.Single(await lesson.Journal(), e => e.Cell.Group == 2).Cell.What);
        await TeacherTaps(lesson, Acts.Reopened);
        Assert.Equal("added", Assert.Single(await device.Tell(late)).Result);
    }

    [Fact]
    public async Task A_station_types_nothing_new_after_the_end()
    {
        await using Taught lesson = await Taught.Start();
        Device station = await lesson.Device(isStation: true);
        await TeacherTaps(lesson, Acts.Ended);
        JsonObject late = At(Entries.Reading("empty", "23.11"), TimeSpan.FromSeconds(2)).With("group", 3);
        Assert.Equal("refused", Assert.Single(await station.Tell(late)).Result);
    }

    [Fact]
    public async Task A_page_without_script_keeps_nothing_that_is_sent_after_the_end()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        IDocument before = await device.Page();
        await TeacherTaps(lesson, Acts.Ended);
        HttpResponseMessage typed = await device.Send(before.QuerySelector("#now form.typing")!, ("written", "23.11"), ("balance", "A"));
        Assert.Contains("Your teacher ended this lesson", await Device.Text(typed), StringComparison.Ordinal);
        HttpResponseMessage asked = await device.Send(
            "/table/correction", ("id", Entries.Id()), ("label", "Mass"), ("was", "23.11"), ("should", "24.11"), ("why", "misread"));
        Assert.Contains("ended", asked.Headers.Location!.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(await lesson.Journal(), e => e.Cell.Group == 2);
    }

    [Fact]
    public async Task A_device_without_a_group_takes_none_after_the_end()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device();
        await TeacherTaps(lesson, Acts.Ended);
        HttpResponseMessage answer = await device.Send("/groups", ("group", "2"));
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Contains("This lesson is over", await Device.Text(answer), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_teacher_types_in_what_stands_on_paper_after_the_end()
    {
        await using Taught lesson = await Taught.Start();
        await TeacherTaps(lesson, Acts.Ended);
        await TeacherSends(lesson, ("kind", "reading"), ("group", "1"), ("what", "empty"), ("written", "23.11"));
        Assert.Single(await lesson.Journal(), e => e.Cell.Group == 1);
    }

    /// <summary>A button of the teacher's live view.</summary>
    private static Task TeacherTaps(Taught lesson, string what) => TeacherSends(lesson, ("kind", "happening"), ("group", "0"), ("what", what), ("text", ""));

    private static async Task TeacherSends(Taught lesson, params (string Name, string Value)[] fields)
    {
        HttpResponseMessage answer = await new Device(lesson.Host.Browser()).Send(
            $"/lessons/{lesson.Lesson.Id}/write", [("id", Entries.Id()), ("trial", "1"), ("back", $"/lessons/{lesson.Lesson.Id}/live"), .. fields]);
        Assert.DoesNotContain("fault", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
    }

    private static JsonObject At(JsonObject entry, TimeSpan fromNow) =>
        entry.With("typedAt", (DateTimeOffset.UtcNow + fromNow).ToString("O", CultureInfo.InvariantCulture));
}
