using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Students;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Answers;

/// <summary>Several students share a device: each says who answers, and nobody answers as somebody else.</summary>
public sealed class WhoAnswersTests
{
    [Fact]
    public async Task A_group_chooses_among_its_own_members_by_number_and_by_name_where_names_are_shown()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Taught.Device(1);
        Assert.Equal("/answers", (await device.Page()).QuerySelector("nav.parts a[href='/answers']")!.GetAttribute("href"));
        Assert.Equal(["Student 1", "Student 2"], await Offered(device));
        Assert.Equal(["Group 1", "In no group yet"], (await device.Page("/answers")).QuerySelectorAll("h2").Select(h => h.TextContent));
        await lesson.Teacher(Acts.ShowNames, LessonState.Yes);
        Assert.Equal(["Amir", "Beth"], await Offered(device));
    }

    [Fact]
    public async Task A_device_is_handed_on_from_one_to_the_next_and_each_finds_the_own_answers()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await device.Send(AnsweringClass.Form(await device.Page("/answers"), "massMagnesium"), ("text", "0.24"), ("unit", "g"));
        await device.Send("/answers/next");
        Assert.Equal(["Student 1", "Student 2"], await Offered(device));
        await device.Send("/answers/who", ("member", "2"));
        IDocument page = await device.Page("/answers");
        Assert.Equal("Group 1 · Student 2", page.QuerySelector(".who")!.TextContent);
        Assert.DoesNotContain("0.24", page.Body!.TextContent, StringComparison.Ordinal);
        await device.Send("/answers/who", ("member", "1"));
        Assert.Contains("0.24", (await device.Page("/answers")).QuerySelector("[data-question=massMagnesium] .wrote")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3", "Student 3 is not in group 1. If that is wrong, tell your teacher.")]
    [InlineData("77", "Student 77 is not in group 1. If that is wrong, tell your teacher.")]
    [InlineData("<b>", "Choose who you are.")]
    public async Task Another_groups_student_is_refused(string member, string sentence)
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Taught.Device(1);
        HttpResponseMessage answer = await device.Send("/answers/who", ("member", member));
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        Assert.Equal(sentence, (await Device.Parsed(answer)).QuerySelector("[role=alert]")!.TextContent);
    }

    [Fact]
    public async Task An_answer_for_a_student_whom_the_device_does_not_answer_for_is_refused_and_nothing_is_kept()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        foreach (int other in (int[])[2, 3, 0, 99])
        {
            Assert.Equal("refused", (await device.Tell(AnsweringClass.Answer("massMagnesium", "0.24", other))).Single().Result);
        }

        Assert.Equal(
            "This device does not answer for student 3: choose who you are first.", (await device.Tell(AnsweringClass.Answer("massMagnesium", "0.24", 3))).Single().Reason);
        Assert.DoesNotContain(await lesson.Taught.Journal(), e => e.Content is EntryContent.Answer);
    }

    [Fact]
    public async Task On_another_device_the_students_word_is_asked_for()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device first = await lesson.Answering(1, 1);
        await first.Tell(AnsweringClass.Answer("massMagnesium", "0.24"));
        string word = (await first.Page("/answers")).QuerySelector("[data-question=all] .code")!.TextContent;
        Assert.Equal(4, word.Length);

        Device second = await lesson.Taught.Device(1);
        Assert.Equal("/answers?who=1", (await second.Send("/answers/who", ("member", "1"))).Headers.Location!.ToString());
        IDocument asked = await second.Page("/answers?who=1");
        Assert.NotNull(asked.QuerySelector("[name=word]"));
        Assert.DoesNotContain(word, asked.DocumentElement.OuterHtml, StringComparison.Ordinal);
        HttpResponseMessage wrong = await second.Send("/answers/who", ("member", "1"), ("word", "QQQQ"));
        Assert.StartsWith("That is not the word.", (await Device.Parsed(wrong)).QuerySelector("[role=alert]")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("refused", (await second.Tell(AnsweringClass.Answer("massMagnesium", "0.99"))).Single().Result);

        await second.Send("/answers/who", ("member", "1"), ("word", word.ToLowerInvariant()));
        Assert.Contains("0.24", (await second.Page("/answers")).QuerySelector("[data-question=massMagnesium] .wrote")!.TextContent, StringComparison.Ordinal);
        // The first goes on too.
        Assert.Equal("added", (await first.Tell(AnsweringClass.Answer("massOxygen", "0.14"))).Single().Result);
        Assert.Contains(word, (await new Device(lesson.Taught.Host.Browser()).Page(lesson.Address)).QuerySelector("#words")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Guessing_words_is_slowed_down()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Answering(1, 1);
        Device other = await lesson.Taught.Device(1);
        for (int i = 0; i < 10; i++)
        {
            await other.Send("/answers/who", ("member", "1"), ("word", "QQQQ"));
        }

        HttpResponseMessage answer = await other.Send("/answers/who", ("member", "1"), ("word", "QQQQ"));
        Assert.Equal("Too many wrong words from here. Wait a minute and try again.", (await Device.Parsed(answer)).QuerySelector("[role=alert]")!.TextContent);
    }

    [Fact]
    public async Task One_who_is_in_no_group_yet_is_in_the_devices_group_by_saying_so()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Taught.Device(3);
        Assert.Equal(["Student 4"], await Offered(device));
        await device.Send("/answers/who", ("member", "4"));
        Assert.Equal("Group 3 · Student 4", (await device.Page("/answers")).QuerySelector(".who")!.TextContent);
        Assert.Equal([4], (await (await lesson.Taught.Room()).Now(TestContext.Current.CancellationToken)).State.MembersOf(3));
    }

    [Fact]
    public async Task A_group_that_nobody_is_in_is_told_to_tell_the_teacher()
    {
        await using Taught lesson = await Taught.Start();
        Device device = await lesson.Device(2);
        Assert.Contains("Nobody is on the list for group 2 yet. Tell your teacher.", (await device.Page("/answers")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_shown_before_the_safety_check_nor_at_a_station_nor_without_a_seat()
    {
        await using AnsweringClass closed = await AnsweringClass.Start(signed: false);
        Device device = await closed.Taught.Device();
        Assert.Equal(HttpStatusCode.Forbidden, (await device.Get("/answers")).StatusCode);
        Assert.Equal("/join", (await new Device(closed.Taught.Host.Browser()).Get("/answers")).Headers.Location!.ToString());
        await using AnsweringClass open = await AnsweringClass.Start();
        Device station = await open.Taught.Device(isStation: true);
        Assert.Equal("/table", (await station.Get("/answers")).Headers.Location!.ToString());
        Assert.Equal("refused", (await station.Tell(AnsweringClass.Answer("massMagnesium", "0.24"))).Single().Result);
    }

    private static async Task<string[]> Offered(Device device) =>
        [.. (await device.Page("/answers")).QuerySelector(".who")!.QuerySelectorAll("button[name=member] .name").Select(b => b.TextContent)];
}
