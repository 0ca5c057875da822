using Calx.App.Live;
using Calx.App.Pages.Classes;
using Calx.App.Pages.Lessons;
using Calx.App.Serving;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Keeping;

/// <summary>The school's balances and their checks.</summary>
public static class BalancesRoutes
{
    /// <summary>Lessons looked through for a balance's letter.</summary>
    private const int MostLessons = 60;

    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder balances = routes.MapGroup("/balances").WithMetadata(Admits.Teacher);
        balances.MapGet("", async (string? fault, HttpContext context, RecordStore store) => Show.Page<BalancesPage>(new BalancesModel(
            [.. (await store.Balances(context.RequestAborted)).OrderBy(b => b.Letter, StringComparer.OrdinalIgnoreCase)], fault)));
        balances.MapPost("", Add);
        balances.MapGet("/{id}", (string id, string? done, HttpContext context, RecordStore store, LessonList lessons) =>
            In(id, context, store, async balance => await Page(balance, null, null, done, context, store, lessons)));
        balances.MapPost("/{id}", (string id, HttpContext context, RecordStore store) => In(id, context, store, balance => Change(balance, context, store)));
        balances.MapPost("/{id}/checks", (string id, HttpContext context, RecordStore store, LessonList lessons, TimeProvider clock) =>
            In(id, context, store, balance => Check(balance, context, store, lessons, clock)));
    }

    private static async Task<IResult> In(string id, HttpContext context, RecordStore store, Func<KeptBalance, Task<IResult>> answer) =>
        RecordId.TryParse(id, out RecordId known)
            && (await store.Balances(context.RequestAborted)).FirstOrDefault(b => b.Id == known) is KeptBalance balance
            ? await answer(balance) : Show.Nothing("balance");

    private static async Task<IResult> Add(HttpContext context, RecordStore store)
    {
        FormFields form = await FormFields.Of(context);
        (string letter, string label) = (NamesPasted.Clean(form["letter"]), NamesPasted.Clean(form["label"]));
        string resolution = form["resolution"];
        string? fault = letter.Length is 0 or > KeptBalance.LongestLetter ? $"The letter printed on it is expected: 1 to {KeptBalance.LongestLetter} characters."
            : label.Length > KeptBalance.LongestLabel ? $"What it is and where it stands has at most {KeptBalance.LongestLabel} characters."
            : !WrittenNumber.TryParse(resolution, out WrittenNumber step) || !(step.Value > 0 && step.Value <= 1) || !ScaleInterval.IsOne((double)step.Value)
                ? "The smallest step in g is expected as the display counts, such as 0.01 (1, 2 or 5 times a power of ten, with a full stop)."
            : null;
        fault ??= (await store.AddBalance(new KeptBalance(RecordId.Draw(), letter, label, resolution), Visitor.TeachersDevice, context.RequestAborted)).Fault();
        return Show.See(fault is null ? "/balances" : Changes.Saying("/balances", "fault", fault));
    }

    private static async Task<IResult> Change(KeptBalance balance, HttpContext context, RecordStore store)
    {
        string label = NamesPasted.Clean((await FormFields.Of(context)).Short("label", KeptBalance.LongestLabel));
        ChangeResult result = await store.ChangeBalance(
            new KeptBalance(balance.Id, balance.Letter, label, balance.Resolution), Visitor.TeachersDevice, context.RequestAborted);
        return Show.See(Changes.Saying($"/balances/{balance.Id}", "done", result.Fault() ?? "Kept."));
    }

    private static async Task<IResult> Check(KeptBalance balance, HttpContext context, RecordStore store, LessonList lessons, TimeProvider clock)
    {
        TypedCheck typed = TypedCheck.Of(await FormFields.Of(context));
        (BalanceCheck? check, string? fault) = typed.Read(balance, clock.GetUtcNow());
        fault ??= (await store.AddCheck(check!, Visitor.TeachersDevice, context.RequestAborted)).Fault();
        return fault is null
            ? Show.See(Changes.Saying($"/balances/{balance.Id}", "done", "The check is kept."))
            : await Page(balance, typed, fault, null, context, store, lessons);
    }

    private static async Task<IResult> Page(
        KeptBalance balance, TypedCheck? typed, string? fault, string? done, HttpContext context, RecordStore store, LessonList lessons)
    {
        var uses = new List<BalanceUse>();
        foreach (LessonRow row in (await lessons.All(context.RequestAborted)).Take(MostLessons))
        {
            int readings = (await store.Entries(row.Lesson.Id, 0, context.RequestAborted)).Count(e =>
                e.Entry.Content is EntryContent.Reading reading && string.Equals(reading.Balance, balance.Letter, StringComparison.OrdinalIgnoreCase));
            if (readings > 0)
            {
                uses.Add(new BalanceUse(row, readings));
            }
        }

        IReadOnlyList<BalanceCheck> checks = [.. (await store.Checks(balance.Id, context.RequestAborted)).OrderByDescending(c => c.At)];
        return Show.Page<BalancePage>(
            new BalanceModel(balance, checks, uses, typed, fault, done), fault is null ? StatusCodes.Status200OK : StatusCodes.Status400BadRequest);
    }
}
