using Calx.App.Live;
using Calx.App.Pages.Papers;
using Calx.App.Pages.Practicals;
using Calx.App.Serving;
using Calx.Papers.Handouts;
using Calx.Papers.Plans;
using Calx.Papers.Reports;
using Calx.Papers.Slips;
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
        PlanForm form = PlanForm.Of(room.Practical, PlanQuery.Of(PlanSnapshot.Read(room.Lesson.Plan)));
        Plan plan = await plans.Of(form, withWays: false, context.RequestAborted);
        var heading = new ReportHeading(model.Class.Name, Dates.Day(room.Lesson.Date), options.Invented);
        return WholeFile.Page(context, PlanReport.Html(plan, plan.Sentences, heading, form.Choice!.Stock, draft: model.Signed is null));
    }

    /// <summary>The page of all papers.</summary>
    public static async Task<IResult> List(LessonRoom room, HttpContext context, LessonDesk desk, PlanDesk plans, TimeProvider clock)
    {
        (LessonModel model, PlanForm form, PaperSetting setting) = await Setting(room, context, desk, plans, clock);
        return Show.Page<PapersPage>(new PapersModel(
            $"{room.Practical.Title}, {model.Class.Name}",
            ($"/lessons/{room.Lesson.Id}", "The lesson"),
            $"/lessons/{room.Lesson.Id}/papers",
            [],
            context.Request.QueryString.ToString(),
            PaperDesk.All(setting, form.Choice!),
            SheetWarnings.Of(room.Plan),
            setting.Look,
            setting.IsChecked));
    }

    /// <summary>One of them.</summary>
    public static async Task<IResult> File(LessonRoom room, string name, HttpContext context, LessonDesk desk, PlanDesk plans, TimeProvider clock)
    {
        (_, PlanForm form, PaperSetting setting) = await Setting(room, context, desk, plans, clock);
        return await PaperDesk.File(context, PaperDesk.All(setting, form.Choice!), name);
    }

    /// <summary>The plan is that of the lesson, with the practical as it was then.</summary>
    private static async Task<(LessonModel Model, PlanForm Form, PaperSetting Setting)> Setting(
        LessonRoom room, HttpContext context, LessonDesk desk, PlanDesk plans, TimeProvider clock)
    {
        LessonModel model = await desk.Model(room, new PageSaid(null, null), context.RequestAborted);
        PlanForm form = PlanForm.Of(room.Practical, PlanQuery.Of(PlanSnapshot.Read(room.Lesson.Plan)));
        Plan plan = await plans.Of(form, withWays: false, context.RequestAborted);
        var occasion = new PaperOccasion(
            model.Class.Name, Dates.Day(room.Lesson.Date), room.Lesson.Room.Length > 0 ? room.Lesson.Room : null, null, null, Dates.Day(Dates.Today(clock)));
        return (model, form, PaperDesk.Setting(plan, occasion, context, model.Signed is not null));
    }

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
}
