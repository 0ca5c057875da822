using AngleSharp.Dom;
using Calx.App.Live;
using Calx.App.Tests.Pages.Students;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Answers;

/// <summary>Judgements on students' pages: a formula is typed, the others are chosen.</summary>
public sealed class JudgementTests
{
    [Fact]
    public async Task A_formula_is_typed_and_the_other_judgements_are_chosen()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        IDocument page = await device.Page("/answers");
        Assert.NotNull(AnsweringClass.Form(page, "formula").QuerySelector("input.formula"));
        Assert.Equal(
            ["group 1", "group 2", "group 3", "group 4", "none of them", "too few groups to tell"],
            AnsweringClass.Form(page, "oddGroup").QuerySelectorAll("label.choice span").Select(s => s.TextContent));
        foreach (string id in (string[])["complete", "cause", "improvement"])
        {
            Assert.True(AnsweringClass.Form(page, id).QuerySelectorAll("input[type=radio]").Length >= 3, id);
        }

        await device.Send(AnsweringClass.Form(page, "complete"), ("text", "cannot-tell"));
        IDocument after = await device.Page("/answers?q=complete");
        Assert.Equal("You chose my weighings cannot tell", after.QuerySelector("[data-question=complete] .wrote")!.TextContent);
        Assert.True(AnsweringClass.Form(after, "complete").QuerySelector("input[value=cannot-tell]")!.HasAttribute("checked"));
    }

    [Theory]
    [InlineData("oddGroup", "5")]
    [InlineData("oddGroup", "group 1")]
    [InlineData("complete", "perhaps")]
    [InlineData("cause", "<script>alert(1)</script>")]
    public async Task What_is_not_among_the_choices_is_refused(string question, string text)
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Device device = await lesson.Answering(1, 1);
        Assert.Equal("That is none of the answers to choose from.", (await device.Tell(AnsweringClass.Answer(question, text))).Single().Reason);
    }

    [Fact]
    public async Task All_that_the_practical_asks_comes_in_its_order()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        LessonView view = await (await lesson.Taught.Room()).Now(TestContext.Current.CancellationToken);
        string[] asked = [.. Calx.App.Pages.Answers.AnswerQuestions.Of(view).Select(q => q.Id)];
        Assert.Equal(
            ["massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio", "percentOxygen", "yield", "formula", "complete", "oddGroup", "cause", "improvement"], asked[..12]);
        Assert.Contains("better", asked);
    }

    [Fact]
    public async Task A_plan_that_leaves_out_the_empty_vessel_asks_for_nothing_that_needs_its_mass()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        Lesson was = lesson.Taught.Lesson;
        string plan = PlanSnapshot.Text(PlanSnapshot.Read(was.Plan) with { NoEmpty = true });
        var other = new Lesson(
            RecordId.Draw(), was.ClassId, was.PracticalId, was.PracticalVersion, was.PracticalSource, plan, was.Date, was.Room, was.Groups, was.Minutes, was.Settings);
        await lesson.Taught.Host.Store.AddLesson(other, "teacher", TestContext.Current.CancellationToken);
        LessonRoom room = (await lesson.Taught.Host.Services.GetRequiredService<LessonRooms>().Find(other.Id, TestContext.Current.CancellationToken))!;
        string[] asked = [.. Calx.App.Pages.Answers.AnswerQuestions.Of(await room.Now(TestContext.Current.CancellationToken)).Select(q => q.Id)];
        Assert.Equal(["massOxygen", "molesOxygen", "complete", "oddGroup", "what-happened", "conserved", "all-burnt"], asked);
    }

    [Fact]
    public async Task One_who_was_away_answers_from_the_catch_up_pack_and_is_not_told_which_heating_counts()
    {
        await using AnsweringClass lesson = await AnsweringClass.Start();
        await lesson.Teacher(Acts.Presence, MemberState.Away, 4);
        Device device = await lesson.Taught.Device(3);
        Assert.DoesNotContain("Student 4", (await device.Page("/answers")).Body!.TextContent, StringComparison.Ordinal);
        await new Device(lesson.Taught.Host.Browser()).Send($"{lesson.Address}/catch-up", ("odd", "0"));

        // Such a student has no group: the device that has joined and taken none offers the name.
        Device own = await lesson.Taught.Device();
        Assert.Contains("/answers", (await own.Page("/groups")).QuerySelectorAll("a").Select(a => a.GetAttribute("href")));
        Assert.Equal("With a catch-up pack", (await own.Page("/answers")).QuerySelectorAll("h2")[^1].TextContent);
        await own.Send("/answers/who", ("member", "4"));
        IDocument page = await own.Page("/answers");
        Assert.Equal(3, page.QuerySelectorAll(".own dd").Length);
        Assert.StartsWith("These are simulated, from your catch-up pack.", page.QuerySelector(".own p")!.TextContent, StringComparison.Ordinal);
        await own.Send(AnsweringClass.Form(page, "massMagnesium"), ("text", "0.24"), ("unit", "g"));
        Assert.Equal(new EntryContent.Answer("0.24", "g"), await lesson.Counts("massMagnesium", 4));
        // A group's device does not.
        Assert.Contains("Student 4 is not in group 3", await Device.Text(await device.Send("/answers/who", ("member", "4"))), StringComparison.Ordinal);
    }
}
