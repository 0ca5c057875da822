using System.Net;
using AngleSharp.Dom;
using Calx.App.Demo;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Tests.Pages.Teachers;
using Calx.Records.Lessons;

namespace Calx.App.Tests.Learning;

/// <summary>What past lessons teach: shown, accepted, in the next plan, taken back.</summary>
public sealed class LearnedPageTests
{
    private const string Page = "/practicals/magnesium-oxide/learned";

    private const string Plan = "/practicals/magnesium-oxide?groups=4&minutes=200";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>18 min from flame out to reading, 0.90 of them for the weighing (mean of the file), are 17 of cooling, not 12; four lessons
    /// outvote the file nearly whole.</summary>
    [Fact]
    public async Task A_longer_cooling_is_told_before_and_after_accepted_planned_with_and_taken_back()
    {
        var clock = new ShiftedClock();
        await using TeachersScreen screen = await TeachersScreen.Start(clock);
        await HeldLessons.Write(screen.Host.Store, clock, [18, 18, 18, 18]);
        string before = Planned(await screen.Page(Plan));
        IDocument page = await screen.Page(Page);
        Assert.Contains("From 4 lessons of 4 classes, with 16 groups that weighed.", page.Body!.TextContent, StringComparison.Ordinal);
        IElement cool = page.QuerySelector("input[name=number][value='time:cool']")!.Closest("li")!;
        Assert.Matches("'Cool on the triangle' took 1[67] min, not 12", cool.TextContent);
        Assert.Contains("10, 12, 20 min", cool.QuerySelector(".change")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("90 % interval", cool.TextContent, StringComparison.Ordinal);
        Assert.Contains("Timed 16 times in four lessons", cool.TextContent, StringComparison.Ordinal);
        Assert.False(page.QuerySelector("input[name=number]")!.HasAttribute("checked"));
        string value = page.QuerySelector("input[name='value.time:cool']")!.GetAttribute("value")!;

        IDocument after = await screen.After(Page, ("number", "time:cool"), ("value.time:cool", value), ("initials", "LM"), ("class", ""));
        Assert.Contains("Accepted", after.QuerySelector("[role=status]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("LM", after.QuerySelector("#accepted")!.TextContent, StringComparison.Ordinal);
        IDocument planned = await screen.Page(Plan);
        Assert.Contains("times learned from 4 lessons, accepted on", Planned(planned), StringComparison.Ordinal);
        Assert.Matches("'cool on the triangle' 1[67] min, not 12", Planned(planned));
        Assert.Equal(before, Planned(await screen.Page(Plan + "&numbers=file")));

        await screen.Send(Page + "/back", ("number", "time:cool "), ("takenback", "LM"));
        Assert.Equal(before, Planned(await screen.Page(Plan)));
        Assert.Equal(2, (await screen.Page(Page)).QuerySelectorAll("#decisions tbody tr").Length);
    }

    [Fact]
    public async Task Nothing_is_accepted_without_initials_or_a_tick_or_unseen()
    {
        var clock = new ShiftedClock();
        await using TeachersScreen screen = await TeachersScreen.Start(clock);
        await HeldLessons.Write(screen.Host.Store, clock, [18]);
        Assert.Contains("Tick the numbers", TeachersScreen.Faults(await screen.After(Page, ("initials", "LM"))), StringComparison.Ordinal);
        Assert.Contains("Initials of 1 to 12", TeachersScreen.Faults(await screen.After(Page, ("number", "time:cool"), ("value.time:cool", "1 2 3"))), StringComparison.Ordinal);
        Assert.Contains("has changed since", TeachersScreen.Faults(await screen.After(Page, ("number", "time:cool"), ("value.time:cool", "1 2 3"), ("initials", "LM"))), StringComparison.Ordinal);
        Assert.Contains("was learned of 'time:nothing'", TeachersScreen.Faults(await screen.After(Page, ("number", "time:nothing"), ("initials", "LM"))), StringComparison.Ordinal);
        Assert.Contains("no class '8Z'", TeachersScreen.Faults(await screen.After(Page, ("number", "time:cool"), ("class", "8Z"), ("initials", "LM"))), StringComparison.Ordinal);
        Assert.Empty(await screen.Host.Store.Decisions("magnesium-oxide", Cancel));
    }

    [Fact]
    public async Task Without_lessons_and_from_trial_runs_nothing_is_learned()
    {
        var clock = new ShiftedClock();
        await using TeachersScreen screen = await TeachersScreen.Start(clock);
        IDocument empty = await screen.Page(Page);
        Assert.Contains("No lesson of this practical is over yet", empty.Body!.TextContent, StringComparison.Ordinal);
        Assert.Null(empty.QuerySelector("input[name=number]"));
        await HeldLessons.Write(screen.Host.Store, clock, [18], new LessonSettings(false, true, Trial: true));
        Assert.Contains("Left out: one trial run of your own.", (await screen.Page(Page)).Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await screen.Browser.GetAsync("/practicals/nothing/learned", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_lesson_that_has_not_begun_takes_the_numbers_of_its_class_when_the_teacher_says_so()
    {
        var clock = new ShiftedClock();
        await using TeachersScreen screen = await TeachersScreen.Start(clock);
        SchoolClass school = await HeldLessons.Class(screen.Host.Store, "9F");
        Lesson lesson = await HeldLessons.Make(screen.Host.Store, school, new DateOnly(2026, 11, 26));
        Assert.DoesNotContain("not in this lesson’s plan yet", (await screen.Page($"/lessons/{lesson.Id}")).Body!.TextContent, StringComparison.Ordinal);
        await screen.Host.Store.Decide(
            [
                new NumberDecision("magnesium-oxide", lesson.PracticalVersion, "", "time:cool", "10 12 20", "10 14 23", "timed 60 times", 5, "LM", DateTimeOffset.UtcNow),
                new NumberDecision("magnesium-oxide", lesson.PracticalVersion, "9f", "time:cool", "10 12 20", "10 16 25", "timed 12 times", 1, "LM", DateTimeOffset.UtcNow),
                new NumberDecision("magnesium-oxide", lesson.PracticalVersion, "9G", "time:cool", "10 12 20", "10 19 29", "timed 12 times", 1, "LM", DateTimeOffset.UtcNow),
            ],
            "the teacher", Cancel);
        Assert.Contains("not in this lesson’s plan yet", (await screen.Page($"/lessons/{lesson.Id}")).Body!.TextContent, StringComparison.Ordinal);
        IDocument after = await screen.After($"/lessons/{lesson.Id}/learned");
        Assert.Contains("This plan goes by times learned from one lesson, accepted on", after.Body!.TextContent, StringComparison.Ordinal);
        Lesson kept = (await screen.Host.Store.FindLesson(lesson.Id, Cancel))!;
        Assert.Equal(16, LessonOpening.Plan(kept).Choice.Settings.Times["cool"].Likely);
        Assert.Contains("has begun, or its plan has", TeachersScreen.Faults(await screen.After($"/lessons/{lesson.Id}/learned")), StringComparison.Ordinal);
    }

    /// <summary>A plan without learned numbers is kept as it was before there were any.</summary>
    [Fact]
    public void A_plan_without_learned_numbers_is_kept_without_a_word_of_them()
    {
        string plan = PlanSnapshot.Text(HeldLessons.Words);
        Assert.DoesNotContain("learned", plan, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("numbers", plan, StringComparison.OrdinalIgnoreCase);
        AcceptedNumbers kept = PlanSnapshot.Read(PlanSnapshot.Text(HeldLessons.Words with { Learned = Some })).Learned!;
        Assert.Equal((6, "9F", new DateOnly(2026, 3, 4), 14.0), (kept.Lessons, kept.Class, kept.AcceptedOn, kept.Times["cool"][1]));
        Assert.Equal(0.2, kept.Rates["misread"]);
    }

    private static AcceptedNumbers Some => new()
    {
        Class = "9F",
        AcceptedOn = new DateOnly(2026, 3, 4),
        Lessons = 6,
        Times = new Dictionary<string, IReadOnlyList<double>> { ["cool"] = [10, 14, 23] },
        Rates = new Dictionary<string, double> { ["misread"] = 0.2 },
        Breaks = new Dictionary<string, double>(),
    };

    private static string Planned(IDocument page) => page.QuerySelector("#figures")!.TextContent;
}
