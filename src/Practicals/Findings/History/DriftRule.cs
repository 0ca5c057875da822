using Calx.Measurement.Distributions;
using Calx.Measurement.Statistics;
using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Findings.History;

/// <summary>Judges a drift by a weighted straight line over time.</summary>
internal static class DriftRule
{
    /// <summary>Two points always lie on a line.</summary>
    public const int Fewest = 3;

    private const double Coverage = 0.95;

    /// <summary>The drift of values, in any order.</summary>
    /// <param name="tooFew">The reason where there are too few of them.</param>
    /// <param name="noLine">The reason where they determine no line.</param>
    /// <param name="values">Day, value and its standard uncertainty, which is above 0.</param>
    public static Drift Of(string tooFew, string noLine, IReadOnlyList<(DateOnly Day, double Value, double StandardUncertainty)> values)
    {
        if (values.Select(v => v.Day).Distinct().Count() < Fewest)
        {
            return new Drift.Unjudged(tooFew);
        }

        DateOnly first = values.Min(v => v.Day);
        DriftUnit unit = values.Max(v => v.Day).DayNumber - first.DayNumber < DriftUnit.Year.Days ? DriftUnit.Month : DriftUnit.Year;
        UncertainPoint[] points = [.. values.Select(v => new UncertainPoint(
            (v.Day.DayNumber - first.DayNumber) / unit.Days, 0, v.Value, v.StandardUncertainty))];
        if (StraightLine.WithErrorsInBoth(points) is not YorkResult.Fitted fitted)
        {
            return new Drift.Unjudged(noLine);
        }

        FittedLine line = fitted.Fit.LineWithScatter;
        double half = StudentT.Quantile((1 + Coverage) / 2, line.DegreesOfFreedom) * line.SlopeStandardUncertainty;
        return new Drift.Judged(
            first, line.Intercept, line.Slope, new CoverageInterval(line.Slope - half, line.Slope + half, Coverage), unit);
    }
}
