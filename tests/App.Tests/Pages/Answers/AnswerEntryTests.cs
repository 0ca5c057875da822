using System.Net;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Students;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Answers;

/// <summary>What becomes of answers that devices send: kept once, changed without a loss, and refused in a sentence.</summary>
public sealed class AnswerEntryTests
{
    [Fact]
    public async Task An_answer_is_kept_once_however_often_it_is_sent()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        JsonObject answer = AnsweringClass.Answer("massMagnesium", " 0.24 ", unit: "g");
        Assert.Equal(["added", "known", "known"], (await device.Tell(answer)).Concat(await device.Tell(answer, answer)).Select(r => r.Result));
        // The same once more under another id says nothing new.
        Assert.Equal("known", (await device.Tell(AnsweringClass.Answer("massMagnesium", "0.24", unit: "g"))).Single().Result);
        Assert.Equal(new EntryContent.Answer("0.24", "g"), Assert.Single(await lesson.Entered("massMagnesium")).Content);
    }

    [Fact]
    public async Task A_changed_answer_replaces_the_one_before_which_stays_struck_through()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        // Two of one question in one sending, as after a lost connection, and then one more.
        await device.Tell(AnsweringClass.Answer("massMagnesium", "0.38"), AnsweringClass.Answer("massMagnesium", "0.42"));
        await device.Tell(AnsweringClass.Answer("massMagnesium", "0.24"));
        IReadOnlyList<JournalEntry> entered = await lesson.Entered("massMagnesium");
        Assert.Equal([null, "changed by the student", "changed by the student"], entered.Select(e => e.Reason));
        Assert.Equal([null, entered[0].Id, entered[1].Id], entered.Select(e => e.Replaces));
        Assert.Equal("0.24", (await lesson.Counts("massMagnesium"))!.Text);
        IElement question = (await device.Page("/answers?q=massMagnesium")).QuerySelector("[data-question=massMagnesium]")!;
        Assert.Equal(["0.38", "0.42"], question.QuerySelectorAll(".old s").Select(s => s.TextContent));
    }

    [Fact]
    public async Task Answers_that_two_devices_send_at_once_follow_each_other()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await Task.WhenAll(Enumerable.Range(0, 12).Select(i => device.Tell(AnsweringClass.Answer("massMagnesium", $"0.{i + 10}"))));
        LessonView view = await (await lesson.Taught.Room()).Now(TestContext.Current.CancellationToken);
        CellState cell = view.Table.Single(c => c.Cell.What == "answer.massMagnesium");
        Assert.Equal((12, 1), (cell.History.Count, cell.Standing.Count));
    }

    [Theory]
    [InlineData("0.24 g", "mg", "0.24 g", null)]
    [InlineData("0.24", "none", "0.24", null)]
    [InlineData("1 : 1.13", null, "1 : 1.13", null)]
    [InlineData("9.9 x 10^-3", "mol", "9.9 x 10^-3", "mol")]
    public async Task A_unit_stands_behind_a_number_once(string text, string? unit, string kept, string? keptUnit)
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await device.Tell(AnsweringClass.Answer("molesMagnesium", text, unit: unit));
        Assert.Equal(new EntryContent.Answer(kept, keptUnit), await lesson.Counts("molesMagnesium"));
    }

    [Fact]
    public async Task What_cannot_be_an_answer_is_refused_in_a_sentence_and_holds_back_no_other()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        var results = await device.Tell(
            AnsweringClass.Answer("massMagnesium", "twelve"),
            AnsweringClass.Answer("massMagnesium", new string('a', 3000)),
            AnsweringClass.Answer("massMagnesium", "   "),
            AnsweringClass.Answer("massGold", "0.24"),
            AnsweringClass.Answer("what-happened", new string('a', 2001)),
            AnsweringClass.Answer("massMagnesium", "0.24").With("what", "mark.massMagnesium"),
            AnsweringClass.Answer("massOxygen", "0.14"));
        Assert.Equal(
            [
                "'twelve' is no number. Write it as 0.24, 9.9 x 10^-3, 1 : 1.13 or 7/8.",
                "That has 3,000 characters; a number was expected, of at most 60 are kept.",
                "Nothing is written: an empty answer is nothing to keep.",
                "This lesson asks no such question.",
                "That has 2,001 characters; at most 2,000 are kept.",
                "This lesson asks no such question.",
                null,
            ],
            results.Select(r => r.Reason));
        Assert.Equal("added", results[^1].Result);
    }

    [Fact]
    public async Task Ten_megabytes_are_refused_and_the_program_goes_on()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        HttpStatusCode? status = null;
        try
        {
            status = (await device.Tell(AnsweringClass.Answer("what-happened", "x"))).Single().Result == "added"
                ? (await device.Post(AnsweringClass.Answer("better", new string('x', 10_000_000)))).StatusCode : null;
        }
        catch (HttpRequestException)
        {
            // The program hangs up before it has read ten megabytes.
            status = HttpStatusCode.RequestEntityTooLarge;
        }

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, status);
        Assert.Equal("added", (await device.Tell(AnsweringClass.Answer("massOxygen", "0.14"))).Single().Result);
        Assert.Empty(await lesson.Entered("better"));
    }

    [Fact]
    public async Task Questions_that_the_teacher_does_not_ask_are_neither_shown_nor_taken()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Set(MarkingSettings.Usual with { Asked = ["massMagnesium", "better"] });
        Device device = await lesson.Answering(1, 1);
        Assert.Equal(
            ["massMagnesium", "better", "all"], (await device.Page("/answers")).QuerySelectorAll("[data-question]").Select(q => q.GetAttribute("data-question")!));
        Assert.Equal("This lesson asks no such question.", (await device.Tell(AnsweringClass.Answer("massOxygen", "0.14"))).Single().Reason);
    }

    [Fact]
    public async Task An_answer_changes_nothing_on_the_pages_of_other_groups()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        LessonRoom room = await lesson.Taught.Room();
        LessonView before = await room.Now(TestContext.Current.CancellationToken);
        await device.Tell(AnsweringClass.Answer("massOxygen", "0.14"));
        LessonView after = await room.Now(TestContext.Current.CancellationToken);
        Assert.Equal((before.NumberFor(2), before.Number + 1), (after.NumberFor(2), after.Number));
    }
}
