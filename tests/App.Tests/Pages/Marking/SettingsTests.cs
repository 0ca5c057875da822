using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Teachers;
using Calx.Practicals.Marking;

namespace Calx.App.Tests.Pages.Marking;

/// <summary>The page on which it is set how a lesson is marked, and when students hear of it.</summary>
public sealed class SettingsTests
{
    [Fact]
    public async Task Everything_is_asked_from_the_start_and_feedback_comes_later()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page("/settings");
        Assert.All(page.QuerySelectorAll("input[name=asked]"), box => Assert.True(box.HasAttribute("checked")));
        Assert.Equal("later", page.QuerySelector("input[name=feedback][checked]")!.GetAttribute("value"));
        // Kept as it is, it stays 'all', whatever a later version asks.
        await screen.Send(Form(page));
        Assert.Null((await Now(screen)).Asked);
    }

    [Fact]
    public async Task What_is_set_is_kept_and_marks_follow_it()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page("/settings");
        page = await Keep(screen, ("asked", "massMagnesium"), ("asked", "better"), ("weights", "school-0dp"), ("early", "one-off"), ("units", "asked"), ("feedback", "never"));
        Assert.Empty(TeachersScreen.Faults(page));
        MarkingSettings now = await Now(screen);
        Assert.Equal(["massMagnesium", "better"], now.Asked!);
        Assert.Equal(("school-0dp", EarlyRounding.OneMarkOff, false, UnitsRule.Asked, FeedbackTime.Never), (now.Weights, now.EarlyRounding, now.Figures, now.Units, now.Feedback));
        Assert.Equal(["massMagnesium", "better"], page.QuerySelectorAll("input[name=asked][checked]").Select(b => b.GetAttribute("value")));
        IDocument students = await screen.Page("/students");
        // Student, one value, one question in words, total, waits.
        Assert.Equal(5, students.QuerySelectorAll("table.marks thead th").Length);
        Assert.Contains("never see", (await screen.Page()).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Asking_nothing_is_refused_and_words_that_the_form_does_not_have_are_as_usual()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        Assert.Contains("ask at least one answer", TeachersScreen.Faults(await Keep(screen, ("weights", "school"))), StringComparison.Ordinal);
        Assert.Contains("ask at least one answer", TeachersScreen.Faults(await Keep(screen, ("asked", "<b>"), ("weights", "school"))), StringComparison.Ordinal);
        await Keep(screen, ("asked", "ratio"), ("asked", "<b>"), ("weights", "none such"), ("early", "x"), ("units", "x"), ("feedback", "x"));
        MarkingSettings now = await Now(screen);
        Assert.Equal(["ratio"], now.Asked!);
        Assert.Equal(("school", EarlyRounding.Accept, UnitsRule.WrongOnes, FeedbackTime.Later), (now.Weights, now.EarlyRounding, now.Units, now.Feedback));
    }

    [Fact]
    public async Task An_assessed_lesson_does_not_offer_feedback_at_once()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered(assessed: true);
        Assert.Empty((await screen.Page("/settings")).QuerySelectorAll("input[name=feedback][value=at-once]"));
        await Keep(screen, ("asked", "ratio"), ("feedback", "at-once"));
        Assert.False((await Now(screen)).ShowsFeedback);
    }

    [Fact]
    public async Task The_teacher_opens_feedback_after_being_told_what_is_not_marked_and_closes_it_again()
    {
        await using MarkingScreen screen = await MarkingScreen.Answered();
        IDocument page = await screen.Page();
        IElement form = page.QuerySelector("form[action$='/feedback']")!;
        Assert.Equal("3 answers in words are not marked yet. Open feedback all the same?", form.GetAttribute("data-ask"));
        page = await screen.Send(form);
        Assert.True((await Now(screen)).ShowsFeedback);
        await screen.Send(form);
        Assert.Single((await screen.Class.Taught.Journal()), e => e.Cell.What == Acts.ShowFeedback);
        await screen.Send(page.QuerySelector("form[action$='/feedback']")!);
        Assert.False((await Now(screen)).ShowsFeedback);
    }

    private static IElement Form(IDocument page) => page.QuerySelector("main form")!;

    private static async Task<MarkingSettings> Now(MarkingScreen screen) => MarkingSettings.Of(await screen.Class.View());

    private static async Task<IDocument> Keep(MarkingScreen screen, params (string Name, string Value)[] fields)
    {
        HttpResponseMessage answer = await screen.Class.Teacher.PostAsync(
            $"{screen.Address}/settings", new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))), TestContext.Current.CancellationToken);
        return answer.Headers.Location is Uri to ? await screen.Page(to.ToString()) : await TeachersScreen.Parsed(answer);
    }
}
