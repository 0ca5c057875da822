using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>What a student may rightly read off a curve drawn by hand through the own points.</summary>
/// <param name="Value">By the curve that is laid through them.</param>
/// <param name="Low">The least that counts as right.</param>
/// <param name="High">The most.</param>
public sealed record CurveReadOff(double Value, double Low, double High)
{
    // A tangent by eye, a half-way line and a level by eye. Judgement.
    private const double TangentByHand = 0.15;
    private const double TimeByHand = 0.08;
    private const double MassByHand = 0.03;

    /// <summary>The same where nothing is said of the balance but its step: its readings scatter by 0.7 of it (judgement).</summary>
    public static IReadOnlyDictionary<string, CurveReadOff> Of(Practical practical, GroupSeries? points, double resolution) =>
        Of(practical, points, resolution, 0.7 * resolution);

    /// <summary>By the id of the quantity; those that the points do not determine are absent.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="points">The student's own points; null for none.</param>
    /// <param name="resolution">Step of the balance in g.</param>
    /// <param name="repeatability">Standard deviation of repeated weighings in g.</param>
    public static IReadOnlyDictionary<string, CurveReadOff> Of(Practical practical, GroupSeries? points, double resolution, double repeatability)
    {
        ArgumentNullException.ThrowIfNull(practical);
        var found = new Dictionary<string, CurveReadOff>(StringComparer.Ordinal);
        if (practical.Series is not SeriesDefinition series || points is null)
        {
            return found;
        }

        GroupCurve curve = new CurveRule(series, resolution, repeatability, EngineLanguage.British).Of(points);
        foreach (CurveQuantity quantity in curve.Quantities.Where(q => q.Value is not null))
        {
            double value = quantity.Value!.Value;
            double byHand = Math.Abs(value) * quantity.Quantity.Gives switch
            {
                CurveGives.RateAtStart => TangentByHand,
                CurveGives.HalfLife or CurveGives.Delay => TimeByHand,
                _ => MassByHand,
            };
            found[quantity.Quantity.Id] = new CurveReadOff(
                value, Math.Min(value - byHand, quantity.Interval!.Value.Low), Math.Max(value + byHand, quantity.Interval.Value.High));
        }

        return found;
    }
}
