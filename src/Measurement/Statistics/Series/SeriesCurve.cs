namespace Calx.Measurement.Statistics.Series;

/// <summary>Curves of school practicals over time: a change that slows down, at a rate of zeroth, first or second order.</summary>
public static class SeriesCurve
{
    // Half of the half-life as its uncertainty: nothing that follows from it would help anybody.
    private const double TooUncertain = 0.5;

    // More than one chance in twenty that the half-life is so long, or so short, that the readings do not show it.
    private const double TooLikely = 0.05;

    // Four standard deviations: the course of the curve was chosen to make the loss as plain as possible.
    private const double PlainLoss = 4;

    /// <summary>Finds a curve of one order.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static CurveResult Fit(TimeSeries series, KineticOrder order, CurveSettings settings)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(settings);
        var rows = new SeriesRows(series, settings.Disturbances);
        int needed = Needed(rows, settings);
        if (rows.Count < needed)
        {
            return new CurveResult.TooFewReadings(rows.Count, needed);
        }

        CurveNodes nodes = CurveNodes.Of(rows, order, settings);
        var curve = new FittedCurve(series, order, settings, rows, nodes);
        return Objection(curve, rows) is { } reason
            ? new CurveResult.NotDetermined(reason)
            : new CurveResult.Fitted(curve);
    }

    /// <summary>Start, loss, half-life, jumps and lag, and one more.</summary>
    internal static int Needed(SeriesRows rows, CurveSettings settings) =>
        4 + rows.Jumps.Length + (settings.Start == CurveStart.AtFirstReading ? 0 : 1);

    internal static string? Objection(FittedCurve curve, SeriesRows rows)
    {
        CoursePart best = curve.Best.Part;
        if (best.Loss * best.Loss < PlainLoss * PlainLoss * best.LossVariance || rows.Values.Max() == rows.Values.Min())
        {
            return "the readings change by no more than their scatter explains";
        }

        if (curve.HalfLife.ProbabilityUpTo(rows.LeastGap) > TooLikely)
        {
            return "the change is nearly over within one gap between readings: read more often at the start";
        }

        return 1 - curve.HalfLife.ProbabilityUpTo(3 * rows.Span) > TooLikely
            || curve.HalfLife.StandardUncertainty > TooUncertain * curve.HalfLife.Estimate
            ? "the readings end before the change has slowed down enough: half-life and final value cannot be told apart"
            : null;
    }
}
