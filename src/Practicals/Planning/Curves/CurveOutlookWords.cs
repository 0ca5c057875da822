using Calx.Measurement.Numbers;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Planning.Curves;

/// <summary>What a teacher is told of mass against time before the lesson.</summary>
internal static class CurveOutlookWords
{
    /// <summary>Fewer groups than this with a curve, and the lesson is not about rates.</summary>
    private const double FewestCurves = 0.5;

    /// <summary>Fewer groups than this that see the order by themselves leave it to the class together.</summary>
    private const double FewestOrders = 0.5;

    /// <summary>A quantity that a group knows no better than this is not worth marks.</summary>
    private const double TooUncertain = 0.25;

    /// <summary>The sentences.</summary>
    public static IReadOnlyList<string> Of(CurveOutlook outlook, EngineLanguage language)
    {
        SeriesTexts texts = new(language);
        string steps = outlook.LossInSteps.InFigures("0");
        if (outlook.CurveFound < FewestCurves)
        {
            return [texts.PlanUseless(steps)];
        }

        Wording wording = new(language);
        string[] known = [.. outlook.Quantities.Where(q => q.StandardUncertainty <= TooUncertain * Math.Abs(q.Median)).Select(q => texts.PlanKnown(
            q.Quantity.Label,
            Figures.Text(q.Median, Figures.DecimalsFor(q.StandardUncertainty)) + q.Quantity.UnitBehind,
            Percent(q.StandardUncertainty / Math.Abs(q.Median))))];
        string[] unknown = [.. outlook.Quantities.Where(q => q.StandardUncertainty > TooUncertain * Math.Abs(q.Median)).Select(q => q.Quantity.Label)];
        string told = Percent(outlook.OrderTold);
        return
        [
            .. known.Length == 0 ? [] : (string[])[texts.PlanCurve(string.Join("; ", known))],
            .. unknown.Length == 0 ? [] : (string[])[texts.PlanRough(wording.AllAnd(unknown))],
            outlook.OrderTold >= FewestOrders ? texts.PlanOrderTold(told) : texts.PlanOrderOpen(told, steps),
            .. outlook.OrderMisled == 0 ? [] : (string[])[texts.PlanOrderMisled(Percent(outlook.OrderMisled))],
        ];
    }

    private static string Percent(double share) => (100 * share).InFigures("0");
}
