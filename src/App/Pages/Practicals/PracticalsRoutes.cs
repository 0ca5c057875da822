using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Papers.Plans;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Ways;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Pages.Practicals;

/// <summary>The practicals, a plan of one, its safety check and its history.</summary>
public static class PracticalsRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder practicals = routes.MapGroup("/practicals").WithMetadata(Admits.Teacher);
        practicals.MapGet("", List);
        WritingRoutes.Map(practicals);
        practicals.MapGet("/{id}", (string id, HttpContext context, Shelf shelf, PlanDesk desk, SafetyGate gate) =>
            With(id, context, shelf, async form => Show.Page<PlanPage>(await Model(form, context, desk, gate))));
        practicals.MapGet("/{id}/figures", (string id, HttpContext context, Shelf shelf, PlanDesk desk, SafetyGate gate) =>
            With(id, context, shelf, async form => Show.Page<PlanFigures>(await Model(form, context, desk, gate))));
        practicals.MapGet("/{id}/ways", (string id, HttpContext context, Shelf shelf, PlanDesk desk) =>
            With(id, context, shelf, async form => Show.Page<PlanWays>(new PlanModel(form, null, await Ways(form, context, desk), null, null))));
        practicals.MapGet("/{id}/print", (string id, HttpContext context, Shelf shelf, PlanDesk desk, SafetyGate gate) =>
            With(id, context, shelf, async form => await Print(form, context, desk, gate)));
        practicals.MapGet("/{id}/papers", (string id, HttpContext context, Shelf shelf, PlanDesk desk, SafetyGate gate) =>
            With(id, context, shelf, async form => await PlanPapers.List(form, context, desk, gate)));
        practicals.MapGet("/{id}/papers/{name}", (string id, string name, HttpContext context, Shelf shelf, PlanDesk desk, SafetyGate gate) =>
            With(id, context, shelf, async form => await PlanPapers.File(form, name, context, desk, gate)));
        practicals.MapPost("/{id}/sign", Sign);
        practicals.MapGet("/{id}/history", (string id, string? all, HttpContext context, History history) =>
            history.Page(id, showsAccepted: all is "yes", context.RequestAborted));
    }

    private static async Task<IResult> List(HttpContext context, Shelf shelf, RecordStore store)
    {
        IReadOnlyList<ShelfItem> items = shelf.All();
        var signed = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (Practical practical in items.Select(i => i.Practical).OfType<Practical>())
        {
            Signature? last = (await store.Signatures(practical.Id, context.RequestAborted)).Where(s => s.PracticalVersion == practical.Version).MaxBy(s => s.At);
            if (last is not null)
            {
                signed[practical.Id] = $"{last.Initials}, {Dates.Day(last.At)}";
            }
        }

        return Pages.Show.Page<PracticalsPage>(new PracticalsModel(items, signed, shelf.Folder, ShelfSearch.Of(context.Request.Query)));
    }

    private static async Task<IResult> With(string id, HttpContext context, Shelf shelf, Func<PlanForm, Task<IResult>> answer) =>
        shelf.Find(id) is Practical practical
            ? await answer(PlanForm.Of(practical, context.Request.Query, await PlanNumbers.Now(context.RequestServices.GetRequiredService<RecordStore>(), practical, context.RequestAborted)))
            : Pages.Show.Nothing("practical");

    private static async Task<PlanModel> Model(PlanForm form, HttpContext context, PlanDesk desk, SafetyGate gate)
    {
        Plan? plan = form.Choice is null ? null : await desk.Of(form, withWays: false, context.RequestAborted);
        bool looks = plan is not null && context.Request.Query.ContainsKey("ways");
        return new PlanModel(
            form,
            plan,
            looks ? await Ways(form, context, desk) : null,
            plan is null ? null : await gate.SignatureFor(plan.Settings, context.RequestAborted),
            context.Request.Query["fault"]);
    }

    private static async Task<IReadOnlyList<PlanWay>> Ways(PlanForm form, HttpContext context, PlanDesk desk) =>
        form.Choice is null ? [] : (await desk.Of(form, withWays: true, context.RequestAborted)).Ways ?? [];

    /// <summary>The plan as one file that needs nothing else, to print or to keep.</summary>
    private static async Task<IResult> Print(PlanForm form, HttpContext context, PlanDesk desk, SafetyGate gate)
    {
        if (form.Choice is null)
        {
            return Pages.Show.See($"/practicals/{form.Practical.Id}{context.Request.QueryString}");
        }

        Plan plan = await desk.Of(form, withWays: true, context.RequestAborted);
        bool draft = await gate.SignatureFor(plan.Settings, context.RequestAborted) is null;
        return WholeFile.Page(context, PlanReport.Html(plan, plan.Sentences, stock: form.Choice.Stock, draft: draft));
    }

    private static async Task<IResult> Sign(string id, HttpContext context, Shelf shelf, RecordStore store, TimeProvider clock)
    {
        FormFields fields = await FormFields.Of(context);
        if (shelf.Find(id) is not Practical practical)
        {
            return Pages.Show.Nothing("practical");
        }

        PlanForm form = PlanForm.Of(practical, fields["plan"], await PlanNumbers.Now(store, practical, context.RequestAborted));
        string? fault = form.Choice is null
            ? "The plan has a fault; put that right first."
            : await Signing.Take(fields, form.Choice.Settings, context, store, clock);
        string back = $"/practicals/{id}{PlanQuery.Of(form.Words)}#safety";
        return Pages.Show.See(fault is null ? back : Changes.Saying(back, "fault", fault));
    }
}
