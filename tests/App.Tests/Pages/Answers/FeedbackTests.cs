using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Students;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Answers;

/// <summary>What students read of their answers, when, and what they never read: a value that they did not find.</summary>
public sealed class FeedbackTests
{
    [Fact]
    public async Task At_once_each_answer_has_a_sentence_and_no_marks()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Set(MarkingSettings.Usual with { Feedback = FeedbackTime.AtOnce });
        Device device = await lesson.Answering(1, 1);
        HttpResponseMessage sent = await device.Send(AnsweringClass.Form(await device.Page("/answers"), "massMagnesium"), ("text", "0.24"), ("unit", "g"));
        // One stays at the question to read what is said of it.
        Assert.Equal("/answers?q=massMagnesium", sent.Headers.Location!.ToString());
        IDocument page = await device.Page("/answers?q=massMagnesium");
        Assert.Equal("Right.", Said(page, "massMagnesium"));
        await device.Tell(AnsweringClass.Answer("massOxygen", "0.38", unit: "g"));
        page = await device.Page("/answers?q=massOxygen");
        Assert.NotEqual("Right.", Said(page, "massOxygen"));
        Assert.Empty(page.QuerySelectorAll(".marks"));
    }

    [Fact]
    public async Task Later_everything_is_read_with_its_marks_once_the_teacher_opens_it()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Set(MarkingSettings.Usual with { Asked = ["massMagnesium", "massOxygen", "better"] });
        Device device = await lesson.Answering(1, 1);
        await device.Tell(
            AnsweringClass.Answer("massMagnesium", "0.24", unit: "g"), AnsweringClass.Answer("massOxygen", "0.99", unit: "g"), AnsweringClass.Answer("better", "More magnesium."));
        IDocument before = await device.Page("/answers?q=massMagnesium");
        Assert.Equal("Handed in.", before.QuerySelector("[data-question=massMagnesium] .stands .quiet:last-child")!.TextContent);
        Assert.Empty(before.QuerySelectorAll(".marks, .done, .advised"));

        await lesson.Write(new JournalCell(0, 1, "mark.better", 1), new EntryContent.Mark(1, 2, "Say why as well."));
        await Open(lesson);
        IDocument after = await device.Page("/answers?q=all");
        Assert.Equal("2 of 4 marks", after.QuerySelector("[data-question=all] .big")!.TextContent);
        Assert.Contains("Mass of magnesium", after.QuerySelector(".advised")!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Equal("Right.1 of 1", Said(after, "massMagnesium"));
        Assert.EndsWith("0 of 1", Said(after, "massOxygen"), StringComparison.Ordinal);
        Assert.Equal("Say why as well.1 of 2", Said(after, "better"));
    }

    [Fact]
    public async Task The_teachers_own_marks_are_read_in_place_of_what_the_rules_say()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Set(MarkingSettings.Usual with { Asked = ["massOxygen"] });
        Device device = await lesson.Answering(1, 1);
        await device.Tell(AnsweringClass.Answer("massOxygen", "0.99", unit: "g"));
        await lesson.Write(new JournalCell(0, 1, "mark.massOxygen", 1), new EntryContent.Mark(1, 1, "the table in the book says so"));
        await Open(lesson);
        Assert.Equal("Marked by your teacher.1 of 1", Said(await device.Page("/answers"), "massOxygen"));
    }

    [Fact]
    public async Task Never_there_is_nothing_but_that_it_is_handed_in()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Set(MarkingSettings.Usual with { Feedback = FeedbackTime.Never });
        Device device = await lesson.Answering(1, 1);
        await device.Tell(AnsweringClass.Answer("massMagnesium", "0.24", unit: "g"));
        await Open(lesson);
        IDocument page = await device.Page("/answers?q=massMagnesium");
        Assert.Equal("Handed in.", page.QuerySelector("[data-question=massMagnesium] .stands .quiet:last-child")!.TextContent);
        Assert.Empty(page.QuerySelectorAll(".marks, .done, .advised"));
        // Closed they are not: nothing was opened that could be read.
        Assert.Equal("added", (await device.Tell(AnsweringClass.Answer("massMagnesium", "0.25", unit: "g"))).Single().Result);
    }

    [Fact]
    public async Task An_assessed_lesson_says_nothing_at_once_whatever_was_set()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start(assessed: true);
        await lesson.Set(MarkingSettings.Usual with { Feedback = FeedbackTime.AtOnce });
        Device device = await lesson.Answering(1, 1);
        await device.Tell(AnsweringClass.Answer("massMagnesium", "0.38", unit: "g"));
        IDocument page = await device.Page("/answers?q=massMagnesium");
        Assert.Empty(page.QuerySelectorAll(".marks, .done, .advised"));
        Assert.Equal("no", page.QuerySelector("#answers")!.GetAttribute("data-at-once"));
    }

    /// <summary>Group 1 has 0.24 g of magnesium and 0.14 g of oxygen: 0.00987 mol, 0.00875 mol and 1.13, MgO, 36.8 % and 95.5 % by IUPAC's
    /// atomic weights 2021 (24.305, 15.999), worked out by hand. None of these is on the page of a student who answers all else wrongly.</summary>
    [Theory]
    [InlineData(FeedbackTime.AtOnce)]
    [InlineData(FeedbackTime.Later)]
    public async Task No_expected_value_no_theory_line_and_no_accepted_value_is_ever_on_a_students_page(FeedbackTime when)
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Set(MarkingSettings.Usual with { Feedback = when });
        Device device = await lesson.Answering(1, 1);
        foreach (string id in (string[])["massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio", "percentOxygen", "yield"])
        {
            await device.Tell(AnsweringClass.Answer(id, "777"));
        }

        await device.Tell(
            AnsweringClass.Answer("formula", "Mg7O7"), AnsweringClass.Answer("complete", "complete"), AnsweringClass.Answer("oddGroup", "2"), AnsweringClass.Answer("cause", "none"));
        if (when == FeedbackTime.Later)
        {
            await Open(lesson);
        }

        IDocument page = await device.Page("/answers");
        Assert.True(page.QuerySelectorAll(".done").Length >= 7, "Feedback is on the page.");
        string text = page.DocumentElement.OuterHtml;
        Assert.All(
            (string[])["0.24 g", "0.14", "0.0099", "0.00987", "0.0087", "1.13", "36.8", "95.5", ">MgO", " MgO", "accepted value", "1 : 1.0"],
            value => Assert.DoesNotContain(value, text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task One_students_feedback_is_not_on_anothers_page()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await device.Tell(AnsweringClass.Answer("massMagnesium", "0.24", unit: "g"));
        await Open(lesson);
        await device.Send("/answers/next");
        await device.Send("/answers/who", ("member", "2"));
        IDocument other = await device.Page("/answers");
        Assert.Empty(other.QuerySelectorAll(".marks, .done, .advised"));
    }

    private static string Said(IDocument page, string question) => page.QuerySelector($"[data-question='{question}'] .done")!.TextContent.Replace(" Right", "Right", StringComparison.Ordinal);

    private static async Task Open(AnsweringClass lesson) => await (await lesson.Taught.Room()).Append(
        MarkingSettings.OpeningEntry(Entries.NewId(), opens: true, DateTimeOffset.UtcNow), TestContext.Current.CancellationToken);
}
