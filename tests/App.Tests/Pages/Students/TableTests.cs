using System.Net;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Students;

/// <summary>What a group's device may send, and what becomes of it.</summary>
public sealed class TableTests
{
    [Fact]
    public async Task A_reading_is_kept_as_written_with_its_balance_and_vessel()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        var results = await device.Tell(Entries.Reading("empty", "23.10").With("vessel", "7"));
        Assert.Equal("added", results.Single().Result);
        var kept = Assert.IsType<EntryContent.Reading>((await lesson.Journal()).Single().Content);
        Assert.Equal(("23.10", "g", "A", "7"), (kept.Written.ToString(), kept.Unit, kept.Balance, kept.Vessel));
        IElement sent = (await device.Page()).QuerySelector("#sent .readings li")!;
        Assert.Equal("23.10", sent.QuerySelector(".value")!.TextContent);
        Assert.Contains("balance A, vessel 7", sent.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_entry_that_is_sent_twice_is_one_entry()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        JsonObject entry = Entries.Reading("empty", "23.11");
        Assert.Equal("added", (await device.Tell(entry)).Single().Result);
        Assert.Equal("known", (await device.Tell(entry)).Single().Result);
        Assert.Single(await lesson.Journal());
        var other = await device.Tell(entry.With("written", "23.12"));
        Assert.Equal("refused", other.Single().Result);
        Assert.Single(await lesson.Journal());
    }

    [Fact]
    public async Task What_was_typed_for_another_group_is_refused_and_not_written_to_the_own_one()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        var results = await device.Tell(Entries.Reading("empty", "23.11").With("group", 3), Entries.Reading("empty", "23.12").With("group", 2));
        Assert.Equal(("refused", "This was typed for group 3, and this device types for group 2."), (results[0].Result, results[0].Reason));
        Assert.Equal("added", results[1].Result);
        Assert.Equal(2, (await lesson.Journal()).Single().Cell.Group);
        Assert.Empty((await device.Page("/table?group=3")).QuerySelectorAll("[data-group='3']"));
    }

    [Theory]
    [InlineData(Acts.Stop, "")]
    [InlineData(Acts.Ended, "")]
    [InlineData(Acts.DevicesFreed, "")]
    [InlineData(Acts.DeviceIn, "")]
    [InlineData(Acts.Condition, "joined:1")]
    [InlineData(Acts.Condition, "simulated")]
    [InlineData(Acts.Condition, "at-work")]
    public async Task What_is_the_teachers_to_say_is_refused_from_a_group(string what, string text)
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        Assert.Equal("refused", (await device.Tell(Entries.Happening(what, text))).Single().Result);
        Assert.Equal("refused", (await device.Tell(Entries.Happening(what, text).With("group", 0))).Single().Result);
        Assert.Empty(await lesson.Journal());
    }

    [Fact]
    public async Task Any_device_of_a_group_corrects_what_was_typed_for_it()
    {
        await using Taught lesson = await Taught.Start();
        Device one = await lesson.Device(2), other = await lesson.Device(2), stranger = await lesson.Device(3);
        string first = Entries.Id();
        await one.Tell(Entries.Reading("empty", "23.11", first));
        var foreign = await stranger.Tell(Entries.Reading("empty", "25.11").With("group", 2).With("replaces", first).With("reason", "misread"));
        Assert.Equal("refused", foreign.Single().Result);
        var note = Entries.Happening("empty").With("kind", "note").With("text", "away").With("replaces", first).With("reason", "misread");
        Assert.Equal("refused", (await other.Tell(note)).Single().Result);
        var own = await other.Tell(Entries.Reading("empty", "24.11").With("replaces", first).With("reason", "looked at the display again"));
        Assert.Equal("added", own.Single().Result);
        IElement sent = (await one.Page()).QuerySelector("#sent .readings li")!;
        Assert.Equal("24.11", sent.QuerySelector(".value")!.TextContent);
        Assert.Equal("23.11 (looked at the display again)", sent.QuerySelector("s")!.TextContent);
    }

    [Fact]
    public async Task A_correction_of_what_the_teacher_decided_reaches_the_teacher_as_one_that_is_asked_for()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        string first = Entries.Id();
        await device.Tell(Entries.Reading("empty", "51.74", first));
        var teacher = new Device(lesson.Host.Browser());
        IElement form = (await teacher.Page($"/lessons/{lesson.Lesson.Id}/groups/2/cells/1/empty")).QuerySelector("form:has(#written)")!;
        await teacher.Send(form, ("written", "15.74"), ("reason", "mistyped"));
        JsonObject late = Entries.Reading("empty", "15.48").With("replaces", first).With("reason", "looked at the display again");
        var answer = (await device.Tell(late)).Single();
        Assert.Equal(("refused", CorrectionWish.PassedOn), (answer.Result, answer.Reason));
        await device.Tell(late);
        IDocument group = await teacher.Page($"/lessons/{lesson.Lesson.Id}/groups/2");
        Assert.EndsWith("51.74 should be 15.48; looked at the display again.", group.QuerySelector("[data-key=asks] li")!.TextContent.Trim(), StringComparison.Ordinal);
        Assert.Equal(1, group.QuerySelectorAll("[data-key=asks] li").Length);
        Assert.Contains("Asked for a correction", (await teacher.Page($"/lessons/{lesson.Lesson.Id}/live")).Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal("15.74", (await device.Page()).QuerySelector("#sent .value")!.TextContent);
    }

    [Fact]
    public async Task Two_devices_of_a_group_that_type_differently_are_both_kept_and_told()
    {
        await using Taught lesson = await Taught.Start();
        Device one = await lesson.Device(2), other = await lesson.Device(2);
        await one.Tell(Entries.Reading("empty", "23.11"));
        await other.Tell(Entries.Reading("empty", "23.17"));
        IElement sent = (await other.Page()).QuerySelector("#sent .readings li")!;
        Assert.Equal("23.11", sent.QuerySelector(".value")!.TextContent);
        Assert.Contains("Another device sent 23.17 for this.", sent.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"entries":[17]}""")]
    [InlineData("""{"entries":[{"id":"0","kind":"reading"}]}""")]
    [InlineData("""{"entries":[{"id":"00000000000000000000000000000001","kind":"poem","what":"empty","written":"1"}]}""")]
    [InlineData("""{"entries":[{"id":"00000000000000000000000000000001","kind":"reading","what":"soup","written":"1"}]}""")]
    [InlineData("""{"entries":[{"id":"00000000000000000000000000000001","kind":"reading","what":"empty","written":"ten"}]}""")]
    [InlineData("""{"entries":[{"id":"00000000000000000000000000000001","kind":"reading","what":"empty","written":"1e400"}]}""")]
    [InlineData("""{"entries":[{"id":"00000000000000000000000000000001","kind":"reading","what":["empty"],"written":{"a":1}}]}""")]
    [InlineData("""{"entries":[{"id":"00000000000000000000000000000001","kind":"observation","what":"flying saucer","seen":true}]}""")]
    public async Task An_entry_that_is_not_understood_is_refused_with_a_reason(string body)
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        HttpResponseMessage answer = await device.PostText(body);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        JsonNode result = JsonNode.Parse(await Device.Text(answer))!["results"]![0]!;
        Assert.Equal("refused", (string?)result["result"]);
        Assert.True(((string?)result["reason"])!.Length > 10, "It does not say why.");
        Assert.Empty(await lesson.Journal());
    }

    [Theory]
    [InlineData("{")]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("""{"entries":7}""")]
    [InlineData("")]
    public async Task What_is_no_list_of_entries_is_refused_as_a_whole(string body)
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        HttpResponseMessage answer = await device.PostText(body);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    [Fact]
    public async Task A_body_that_is_too_large_is_turned_away()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        string huge = $$"""{"entries":[{"text":"{{new string('x', 300_000)}}"}]}""";
        HttpResponseMessage answer = await device.PostText(huge);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Fact]
    public async Task What_a_group_types_is_text_on_its_page()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        const string Hostile = "<img src=x onerror=alert(1)>";
        await device.Tell(
            Entries.Happening(Acts.CorrectionAsked, Hostile),
            new JsonObject { ["id"] = Entries.Id(), ["kind"] = "note", ["what"] = "note", ["text"] = Hostile },
            Entries.Reading("empty", "23.11", balance: Hostile).With("vessel", "\"><script>"));
        await lesson.Teacher(Acts.Announce, Hostile);
        IDocument page = await device.Page();
        Assert.Empty(page.QuerySelectorAll("img"));
        Assert.DoesNotContain(page.QuerySelectorAll("script"), s => !s.HasAttribute("src"));
        Assert.Empty(page.QuerySelectorAll("[style]"));
        Assert.Contains(Hostile, page.QuerySelector("#sent")!.TextContent, StringComparison.Ordinal);
    }
}
