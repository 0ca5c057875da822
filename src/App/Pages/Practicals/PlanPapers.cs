using Calx.App.Live;
using Calx.App.Pages.Papers;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Practicals.Planning;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Pages.Practicals;

/// <summary>The papers of a plan, before there is a lesson: class and date are left blank.</summary>
public static class PlanPapers
{
    private static readonly string[] OfLook = ["sheet", "tint", "large", "onestep", "seed"];

    /// <summary>The page that lists them.</summary>
    public static async Task<IResult> List(PlanForm form, HttpContext context, PlanDesk desk, SafetyGate gate)
    {
        if (form.Choice is null)
        {
            return Back(form, context);
        }

        PaperSetting setting = await Setting(form, context, desk, gate);
        string address = $"/practicals/{form.Practical.Id}";
        return Pages.Show.Page<PapersPage>(new PapersModel(
            form.Practical.Title,
            ($"{address}{PlanQuery.Of(form.Words)}", "The plan"),
            $"{address}/papers",
            [.. context.Request.Query.Where(q => !OfLook.Contains(q.Key)).SelectMany(q => q.Value.Select(v => KeyValuePair.Create(q.Key, v ?? "")))],
            context.Request.QueryString.ToString(),
            PaperDesk.All(setting, form.Choice),
            SheetWarnings.Of(form.Choice.Settings),
            setting.StudentLook,
            setting.IsChecked)
        {
            Seed = setting.Seed,
        });
    }

    /// <summary>One of them.</summary>
    public static async Task<IResult> File(PlanForm form, string name, HttpContext context, PlanDesk desk, SafetyGate gate) =>
        form.Choice is null ? Back(form, context) : await PaperDesk.File(context, PaperDesk.All(await Setting(form, context, desk, gate), form.Choice), name);

    private static async Task<PaperSetting> Setting(PlanForm form, HttpContext context, PlanDesk desk, SafetyGate gate)
    {
        Plan plan = await desk.Of(form, withWays: false, context.RequestAborted);
        PaperOccasion occasion = PaperOccasion.Unsaid with { Printed = Dates.Day(Dates.Today(context.RequestServices.GetRequiredService<TimeProvider>())) };
        return PaperDesk.Setting(plan, occasion, context, await gate.SignatureFor(plan.Settings, context.RequestAborted) is not null, seed: 1);
    }

    private static IResult Back(PlanForm form, HttpContext context) => Pages.Show.See($"/practicals/{form.Practical.Id}{context.Request.QueryString}");
}
