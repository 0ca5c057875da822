using Calx.Measurement.Statistics.Nonlinear;

namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// The same curves by plain nonlinear least squares: what a graph program gives, with uncertainties that hold only where each
/// reading scatters by itself. Start values are found here.
/// </summary>
public static class CurveLeastSquares
{
    /// <summary>Finds start, loss and half-life, and the delay where one is asked for; times count from the first reading.</summary>
    /// <param name="series">The readings.</param>
    /// <param name="order">The order.</param>
    /// <param name="delayed">Whether the change may begin later than the first reading.</param>
    public static NonlinearFitResult Fit(TimeSeries series, KineticOrder order, bool delayed = false)
    {
        ArgumentNullException.ThrowIfNull(series);
        var rows = new SeriesRows(series, []);
        double[] values = series.Values.ToArray();
        var model = new CurveModel(rows.Times, order, delayed);
        double[] start = Start(rows, values, order, delayed);
        if (values.Length <= start.Length)
        {
            return new NonlinearFitResult.TooFewPoints(values.Length, start.Length + 1);
        }

        (double low, double high) = rows.LogHalfLives;
        double[] lower = [double.NegativeInfinity, double.NegativeInfinity, Math.Exp(low) / 10, 0];
        double[] upper = [double.PositiveInfinity, double.PositiveInfinity, Math.Exp(high) * 10, rows.Span];
        return NonlinearLeastSquares.Fit(
            new NonlinearProblem(model, values, start).Bounded(lower.AsSpan(0, start.Length), upper.AsSpan(0, start.Length)));
    }

    // Start and loss follow from half-life and delay by a straight line.
    private static double[] Start(SeriesRows rows, double[] values, KineticOrder order, bool delayed)
    {
        var line = new ConditionalFit(rows, new NoiseNode(1, 0, 1, 0, 0, true), 0);
        (double delay, double logHalfLife) = LikeliestCourse.Of(rows, order, delayed, gone => -line.At(gone).Squares);
        double halfLife = Math.Exp(logHalfLife);
        LinearPart best = line.At(rows.Gone(order, delay, halfLife));
        double[] all = [values[0] + best.Start, best.Loss, halfLife, delay];
        return all[..(delayed ? 4 : 3)];
    }
}
