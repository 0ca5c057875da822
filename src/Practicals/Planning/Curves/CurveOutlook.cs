using Calx.Measurement.Statistics;
using Calx.Measurement.Statistics.Series;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Planning.Curves;

/// <summary>
/// Whether the planned balance and amounts can tell rates and the order from mass against time: simulated groups of the plan, each
/// with its own curve, faults and slips included.
/// </summary>
public sealed class CurveOutlook
{
    /// <summary>Groups that are simulated: a share is known to a tenth, which is what a teacher decides by.</summary>
    public const int Groups = 24;

    private const ulong FirstStream = 7_000_000;

    private CurveOutlook(
        SeriesDefinition series, IReadOnlyList<CurveOutlookQuantity> quantities, IReadOnlyList<double> typicalLoss, double found, double told, double misled, double steps)
    {
        (Series, Quantities, TypicalLossInGrams, CurveFound, OrderTold, OrderMisled, LossInSteps) =
            (series, quantities, typicalLoss, found, told, misled, steps);
    }

    /// <summary>The series.</summary>
    public SeriesDefinition Series { get; }

    /// <summary>What groups will find; those that no group finds are absent.</summary>
    public IReadOnlyList<CurveOutlookQuantity> Quantities { get; }

    /// <summary>The middle of the mass lost at each planned time, in g, as the balance shows it.</summary>
    public IReadOnlyList<double> TypicalLossInGrams { get; }

    /// <summary>Share of groups whose points determine a curve.</summary>
    public double CurveFound { get; }

    /// <summary>Share of groups whose own points show the practical's order.</summary>
    public double OrderTold { get; }

    /// <summary>Share of groups whose own points seem to show another.</summary>
    public double OrderMisled { get; }

    /// <summary>The whole loss in steps of the balance.</summary>
    public double LossInSteps { get; }

    /// <summary>What a quantity will be, or null.</summary>
    public CurveOutlookQuantity? Find(string id) => Quantities.FirstOrDefault(q => q.Quantity.Id == id);

    /// <summary>Works it out; null where the practical takes no series.</summary>
    internal static CurveOutlook? Of(PlanSettings settings, GroupDrawer drawer, ulong seed, CancellationToken cancellation)
    {
        if (settings.Practical.Series is not SeriesDefinition series)
        {
            return null;
        }

        var balance = settings.Balances[0];
        var rule = new CurveRule(series, balance.ResolutionInGrams, balance.RepeatabilityInGrams, settings.Language);
        GroupSeries[] drawn = [.. Enumerable.Range(0, Groups).Select(i => drawer.Draw(seed, FirstStream + (ulong)i, i + 1).Series!)];
        var curves = new GroupCurve[Groups];
        Parallel.For(0, Groups, new ParallelOptions { CancellationToken = cancellation }, i => curves[i] = rule.Of(drawn[i]));
        CurveOutlookQuantity[] quantities = [.. series.Quantities.Select(q => Quantity(q, curves)).OfType<CurveOutlookQuantity>()];
        double[] lost = [.. series.TimesInMinutes.Select((_, i) =>
            Summary.Median([.. drawn.Select(d => d.Points[0].Value.AsDouble - d.Points[i].Value.AsDouble)]))];
        return new CurveOutlook(
            series,
            quantities,
            lost,
            Share(curves, c => c.Fit is not null),
            Share(curves, c => c.Order is OrderVerdict.Prefers prefers && prefers.Order == series.Order),
            Share(curves, c => c.Order is OrderVerdict.Prefers prefers && prefers.Order != series.Order),
            Math.Abs(lost[^1]) / balance.ResolutionInGrams);
    }

    private static double Share(GroupCurve[] curves, Func<GroupCurve, bool> has) => (double)curves.Count(has) / curves.Length;

    private static CurveOutlookQuantity? Quantity(CurveQuantityDefinition quantity, GroupCurve[] curves)
    {
        CurveQuantity[] found = [.. curves.Select(c => c.Find(quantity.Id)).OfType<CurveQuantity>()];
        if (found.Length == 0)
        {
            return null;
        }

        double[] values = [.. found.Select(q => q.Value!.Value).Order()];
        return new CurveOutlookQuantity(
            quantity,
            Summary.Median(values),
            values[(int)(0.05 * (values.Length - 1))],
            values[(int)Math.Ceiling(0.95 * (values.Length - 1))],
            Summary.Median([.. found.Select(q => q.StandardUncertainty!.Value)]));
    }
}

/// <summary>What groups will find of one quantity of their curves.</summary>
/// <param name="Quantity">Which.</param>
/// <param name="Median">The middle of the groups' values.</param>
/// <param name="Low">About 90 of 100 groups lie above.</param>
/// <param name="High">About 90 of 100 groups lie below.</param>
/// <param name="StandardUncertainty">How well a typical group knows its own.</param>
public sealed record CurveOutlookQuantity(CurveQuantityDefinition Quantity, double Median, double Low, double High, double StandardUncertainty);
