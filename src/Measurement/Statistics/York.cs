namespace Calx.Measurement.Statistics;

/// <summary>
/// The unified equations of York et al. (2004), (13): for a slope b each point weighs W = 1/(u_y² + b²u_x² - 2b·r·u_x·u_y),
/// and b is the fixed point of ΣWβV/ΣWβU. Written with uncertainties, not their reciprocals, so that u_x may be 0.
/// </summary>
internal sealed class York
{
    private const int MostSteps = 1000;

    /// <summary>Relative change of the slope: the rounding of sums over thousands of points stays below it.</summary>
    private const double Settled = 1e-13;

    private readonly IReadOnlyList<UncertainPoint> points;
    private readonly bool throughOrigin;
    private readonly double[] weights;
    private readonly double[] shifts;

    private York(IReadOnlyList<UncertainPoint> points, bool throughOrigin)
    {
        this.points = points;
        this.throughOrigin = throughOrigin;
        weights = new double[points.Count];
        shifts = new double[points.Count];
    }

    public static YorkResult Fit(IReadOnlyList<UncertainPoint> points, bool throughOrigin)
    {
        ArgumentNullException.ThrowIfNull(points);
        double[] x = [.. points.Select(point => point.X)];
        double[] y = [.. points.Select(point => point.Y)];
        LineResult start = throughOrigin
            ? StraightLine.LeastSquaresThroughOrigin(x, y)
            : StraightLine.LeastSquares(x, y);
        return start switch
        {
            LineResult.Fitted plain => new York(points, throughOrigin).Settle(plain.Fit.Line.Slope),
            LineResult.NotFitted not => new YorkResult.NotFitted(not.Reason),
            _ => throw new InvalidOperationException("No other case of a fitted line exists."),
        };
    }

    private YorkResult Settle(double slope)
    {
        for (int step = 1; step <= MostSteps; step++)
        {
            double next = Next(slope);
            bool settled = Math.Abs(next - slope) <= Settled * Math.Abs(next);
            if (settled || next == slope)
            {
                return new YorkResult.Fitted(Line(next, step));
            }

            if (!double.IsFinite(next))
            {
                break;
            }

            slope = next;
        }

        return new YorkResult.NotFitted("the points scatter so much against their spread along x that no slope settles");
    }

    private double Next(double slope)
    {
        (double x, double y) = Centre(slope);
        double rise = 0;
        double run = 0;
        for (int i = 0; i < points.Count; i++)
        {
            shifts[i] = Shift(points[i], weights[i], slope, x, y);
            rise += weights[i] * shifts[i] * (points[i].Y - y);
            run += weights[i] * shifts[i] * (points[i].X - x);
        }

        return rise / run;
    }

    private (double X, double Y) Centre(double slope)
    {
        double total = 0;
        double x = 0;
        double y = 0;
        for (int i = 0; i < points.Count; i++)
        {
            weights[i] = Weight(points[i], slope);
            total += weights[i];
            x += weights[i] * points[i].X;
            y += weights[i] * points[i].Y;
        }

        return throughOrigin ? (0, 0) : (x / total, y / total);
    }

    private YorkLine Line(double slope, int steps)
    {
        (double x, double y) = Centre(slope);
        double total = weights.Sum();
        for (int i = 0; i < points.Count; i++)
        {
            shifts[i] = Shift(points[i], weights[i], slope, x, y);
        }

        double lean = throughOrigin ? 0 : Enumerable.Range(0, shifts.Length).Sum(i => weights[i] * shifts[i]) / total;
        double squares = Enumerable.Range(0, shifts.Length)
            .Sum(i => weights[i] * (shifts[i] - lean) * (shifts[i] - lean));
        var spread = new LineSpread(x + lean, throughOrigin ? 0 : 1 / total, 1 / squares);
        double intercept = y - (slope * x);
        double chiSquared = Enumerable.Range(0, shifts.Length)
            .Sum(i => weights[i] * Math.Pow(points[i].Y - y - (slope * (points[i].X - x)), 2));
        return new YorkLine(intercept, slope, spread, new YorkAgreement(chiSquared, points.Count, throughOrigin ? 1 : 2, steps));
    }

    private static double Weight(UncertainPoint point, double slope)
    {
        double lean = slope * point.XStandardUncertainty;
        double cross = 2 * lean * point.Correlation * point.YStandardUncertainty;
        return 1 / ((point.YStandardUncertainty * point.YStandardUncertainty) + (lean * lean) - cross);
    }

    // β of York's equations: where along x the point most probably belongs, from the centre.
    private static double Shift(UncertainPoint point, double weight, double slope, double x, double y)
    {
        double across = point.X - x;
        double up = point.Y - y;
        double ux = point.XStandardUncertainty;
        double uy = point.YStandardUncertainty;
        double shared = ((slope * across) + up) * point.Correlation * ux * uy;
        return weight * ((across * uy * uy) + (slope * up * ux * ux) - shared);
    }
}
