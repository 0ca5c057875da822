using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Pages.CatchUp;
using Calx.App.Pages.Papers;
using Calx.App.Pages.Practicals;
using Calx.App.Serving;
using Calx.Papers.Handouts;
using Calx.Papers.Plans;
using Calx.Papers.Reports;
using Calx.Papers.Slips;
using Calx.Practicals.Findings;
using Calx.Practicals.Planning;
using Calx.Records.Lessons;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Lessons;

/// <summary>What a lesson gives to print and to keep.</summary>
public static class LessonPapers
{
    /// <summary>Record slips, one a group.</summary>
    public static async Task<IResult> Slips(LessonRoom room, HttpContext context, LessonDesk desk, ServeOptions options)
    {
        LessonModel model = await desk.Model(room, new PageSaid(null, null), context.RequestAborted);
        var heading = new ReportHeading(model.Class.Name, Dates.Day(room.Lesson.Date), options.Invented);
        return WholeFile.Page(context, RecordSlips.Html(room.Practical, SlipSettings.Of(room.Plan), heading, draft: model.Signed is null));
    }

    /// <summary>The plan that the lesson was made of, with the practical as it was then.</summary>
    public static async Task<IResult> Plan(LessonRoom room, HttpContext context, LessonDesk desk, PlanDesk plans, ServeOptions options)
    {
        LessonModel model = await desk.Model(room, new PageSaid(null, null), context.RequestAborted);
        PlanForm form = FormOf(room);
        Plan plan = await plans.Of(form, withWays: false, context.RequestAborted);
        var heading = new ReportHeading(model.Class.Name, Dates.Day(room.Lesson.Date), options.Invented);
        return WholeFile.Page(context, PlanReport.Html(plan, plan.Sentences, heading, form.Choice!.Stock, draft: model.Signed is null));
    }

    /// <summary>The page of all papers.</summary>
    public static async Task<IResult> List(LessonRoom room, HttpContext context, LessonDesk desk, PlanDesk plans, ServeOptions options, TimeProvider clock)
    {
        ClassOutcome? outcome = await Outcome(room, context, desk, options, causes: false);
        (LessonModel model, PlanForm form, PaperSetting setting) = await Setting(room, context, desk, plans, options, clock);
        return Show.Page<PapersPage>(new PapersModel(
            $"{room.Practical.Title}, {model.Class.Name}",
            ($"/lessons/{room.Lesson.Id}", "The lesson"),
            $"/lessons/{room.Lesson.Id}/papers",
            [],
            context.Request.QueryString.ToString(),
            Papers(model, setting, form, outcome),
            model.View.State.IsCover ? [] : SheetWarnings.Of(room.Plan),
            setting.StudentLook,
            model.View.State.IsCover || setting.IsChecked,
            outcome,
            LessonCatchUp.Model(model, setting, context))
        {
            IsCover = model.View.State.IsCover, Seed = setting.Seed,
        });
    }

    /// <summary>One of them.</summary>
    public static async Task<IResult> File(LessonRoom room, string name, HttpContext context, LessonDesk desk, PlanDesk plans, ServeOptions options, TimeProvider clock)
    {
        // Causes take longer and stand on one paper only.
        ClassOutcome? outcome = await Outcome(
            room, context, desk, options, causes: name == PaperDesk.Everything || name.StartsWith(ReportSheet.Id, StringComparison.Ordinal));
        (LessonModel model, PlanForm form, PaperSetting setting) = await Setting(room, context, desk, plans, options, clock);
        PaperSet papers = Papers(model, setting, form, outcome).With([.. LessonCatchUp.Papers(model, setting, context).Select(p => p.Paper)]);
        return await PaperDesk.File(context, papers, name, LessonCatchUp.Truth(model, setting, context));
    }

    /// <summary>Nothing is put out for a cover lesson: its papers are those for whoever takes it and for the class.</summary>
    private static PaperSet Papers(LessonModel model, PaperSetting setting, PlanForm form, ClassOutcome? outcome) =>
        model.View.State.IsCover ? PaperSet.Of(setting, [PaperKind.Cover], []) : PaperDesk.All(setting, form.Choice!, outcome);

    /// <summary>What the class found, or null while no group has typed a reading of its own.</summary>
    private static async Task<ClassOutcome?> Outcome(LessonRoom room, HttpContext context, LessonDesk desk, ServeOptions options, bool causes) =>
        (await desk.Findings(room, causes, context.RequestAborted)).Findings is ClassFindings findings
            ? new ClassOutcome(findings, options.Invented, ShowsAccepted: context.Request.Query["accepted"] == "yes") : null;

    /// <summary>The plan is that of the lesson, with the practical as it was then.</summary>
    private static async Task<(LessonModel Model, PlanForm Form, PaperSetting Setting)> Setting(
        LessonRoom room, HttpContext context, LessonDesk desk, PlanDesk plans, ServeOptions options, TimeProvider clock)
    {
        LessonModel model = await desk.Model(room, new PageSaid(null, null), context.RequestAborted);
        PlanForm form = FormOf(room);
        Plan plan = await plans.Of(form, withWays: false, context.RequestAborted);
        var occasion = new PaperOccasion(
            model.Class.Name, Dates.Day(room.Lesson.Date), Said(room.Lesson.Room), Said(room.Lesson.Period), Said(room.Lesson.Teacher), Dates.Day(Dates.Today(clock)), options.Invented);
        return (model, form, PaperDesk.Setting(plan, occasion, context, model.Signed is not null, room.PaperSeed));
    }

    private static string? Said(string text) => text.Length > 0 ? text : null;

    /// <summary>The findings as one file that needs nothing else.</summary>
    public static async Task<IResult> Report(LessonRoom room, HttpContext context, LessonDesk desk, ServeOptions options)
    {
        FindingsModel model = await desk.Findings(room, causes: true, context.RequestAborted);
        if (model.Findings is null)
        {
            return Show.See($"/lessons/{room.Lesson.Id}/findings");
        }

        var heading = new ReportHeading(model.Class.Name, Dates.Day(room.Lesson.Date), options.Invented);
        return WholeFile.Download(ClassReport.Html(model.Findings, heading), $"findings-{FileName(model.Class, room.Lesson)}.html");
    }

    /// <summary>A name for a file of a lesson, of letters and digits only.</summary>
    public static string FileName(SchoolClass one, Lesson lesson) =>
        $"{new string([.. one.Name.Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')])}-{Dates.ForField(lesson.Date)}-{lesson.PracticalId}";

    /// <summary>The plan as the lesson was made with it, learned numbers and all.</summary>
    private static PlanForm FormOf(LessonRoom room)
    {
        PlanWords words = PlanSnapshot.Read(room.Lesson.Plan);
        return PlanForm.Of(room.Practical, PlanQuery.Of(words), PlanNumbers.Kept(words.Learned));
    }
}
