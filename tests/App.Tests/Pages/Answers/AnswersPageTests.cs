using System.Net;
using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Students;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Answers;

/// <summary>The page on which a student answers, without its script.</summary>
public sealed class AnswersPageTests
{
    [Fact]
    public async Task The_own_readings_stand_on_top_as_written_with_units()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        IDocument page = await device.Page("/answers");
        Assert.Equal(["23.11\u00a0g", "23.35\u00a0g", "23.49\u00a0g"], page.QuerySelectorAll(".own dd").Select(d => d.TextContent));
        Assert.Empty(page.QuerySelectorAll(".own p"));
    }

    [Fact]
    public async Task A_reading_that_is_missing_is_said_kindly()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await (await lesson.Taught.Device(2)).Tell(Entries.Reading("empty", "24.11"), Entries.Reading("before", "24.35"));
        Device device = await lesson.Answering(2, 3);
        Assert.Equal("Your group’s table has no mass after heating yet.", (await device.Page("/answers")).QuerySelector(".own p")!.TextContent);
    }

    [Fact]
    public async Task Questions_come_one_at_a_time_each_going_on_to_the_next_that_is_open()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        Assert.Equal("massMagnesium", Shown(await device.Page("/answers")));
        HttpResponseMessage sent = await device.Send(AnsweringClass.Form(await device.Page("/answers"), "massMagnesium"), ("text", "0.24"), ("unit", "g"));
        Assert.Equal("/answers?q=massOxygen", sent.Headers.Location!.ToString());
        Assert.Equal("massOxygen", Shown(await device.Page("/answers")));
        // One goes back, and changes an answer.
        IDocument back = await device.Page("/answers?q=massMagnesium");
        Assert.Equal("massMagnesium", Shown(back));
        await device.Send(AnsweringClass.Form(back, "massMagnesium"), ("text", "0.25"), ("unit", "g"));
        Assert.Equal(["0.24\u00a0g"], (await device.Page("/answers?q=massMagnesium")).QuerySelectorAll("[data-question=massMagnesium] .old s").Select(s => s.TextContent));
    }

    [Fact]
    public async Task A_double_click_is_one_answer_and_a_form_that_was_gone_back_to_makes_another()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        IElement form = AnsweringClass.Form(await device.Page("/answers"), "massMagnesium");
        await device.Send(form, ("text", "0.24"), ("unit", "g"));
        await device.Send(form, ("text", "0.24"), ("unit", "g"));
        Assert.Single(await lesson.Entered("massMagnesium"));
        await device.Send(form, ("text", "0.26"), ("unit", "g"));
        Assert.Equal(["0.24", "0.26"], (await lesson.Entered("massMagnesium")).Select(e => ((EntryContent.Answer)e.Content).Text));
        Assert.Equal("0.26", (await lesson.Counts("massMagnesium"))!.Text);
    }

    [Fact]
    public async Task What_is_not_taken_is_told_beside_the_question_and_stays_in_its_field()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        HttpResponseMessage answer = await device.Send(AnsweringClass.Form(await device.Page("/answers"), "massOxygen"), ("text", "fourteen hundredths"), ("unit", "g"));
        Assert.Equal(HttpStatusCode.Conflict, answer.StatusCode);
        IDocument page = await Device.Parsed(answer);
        Assert.StartsWith("'fourteen hundredths' is no number.", page.QuerySelector("#not-taken")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("massOxygen", Shown(page));
        Assert.Equal("fourteen hundredths", page.QuerySelector("[data-question=massOxygen] input[name=text]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task The_unit_is_there_where_headings_have_it_and_is_not_given_away_where_it_is_asked_for()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        IDocument page = await device.Page("/answers");
        Assert.Equal("Mass of magnesium / g", page.QuerySelector("[data-question=massMagnesium] h1")!.TextContent.Replace('\u00a0', ' '), ignoreCase: true);
        Assert.Equal("g", page.QuerySelector("[data-question=massMagnesium] option[selected]")!.GetAttribute("value"));
        await lesson.Set(MarkingSettings.Usual with { Units = UnitsRule.Asked });
        page = await device.Page("/answers");
        string[][] units = [.. page.QuerySelectorAll("[data-kind=value] select").Select(s => s.QuerySelectorAll("option").Select(o => o.GetAttribute("value")!).ToArray())];
        Assert.All(units, u => Assert.Equal(units[0], u));
        Assert.All(page.QuerySelectorAll("[data-kind=value] select"), s => Assert.Empty(s.QuerySelectorAll("option[selected]")));
        Assert.DoesNotContain("/", page.QuerySelector("[data-question=massMagnesium] h1")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Questions_in_words_say_how_much_is_kept()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        IElement form = AnsweringClass.Form(await device.Page("/answers?q=better"), "better");
        Assert.Contains("at most 2,000 characters", form.TextContent, StringComparison.Ordinal);
        await device.Send(form, ("text", "More magnesium.\r\nIts mass is then better known."));
        Assert.Equal("More magnesium.\nIts mass is then better known.", (await lesson.Counts("better"))!.Text);
    }

    [Fact]
    public async Task STOP_fills_this_page_too()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        await lesson.Teacher(Acts.Stop, "");
        Assert.NotNull((await device.Page("/answers")).QuerySelector(".fill.stop"));
        await device.Send("/answers/next");
        Assert.NotNull((await device.Page("/answers")).QuerySelector(".fill.stop"));
    }

    private static string Shown(IDocument page) => Assert.Single(page.QuerySelectorAll(".question.current")).GetAttribute("data-question")!;
}
