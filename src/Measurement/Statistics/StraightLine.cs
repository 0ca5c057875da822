namespace Calx.Measurement.Statistics;

/// <summary>Fits straight lines to points.</summary>
public static class StraightLine
{
    internal const string EqualPlaces = "all points have the same x, so no slope can be told";

    /// <summary>
    /// Ordinary least squares with an intercept (JCGM 100:2008, H.3): right where x is known far better than y and y
    /// scatters alike everywhere. Points whose x is uncertain too make this slope too flat: see
    /// <see cref="WithErrorsInBoth"/>.
    /// </summary>
    /// <exception cref="ArgumentException">No points, unequal lengths, or a number not finite.</exception>
    public static LineResult LeastSquares(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        RequirePoints(x, y);
        if (x.Length < 3)
        {
            return new LineResult.NotFitted("two points always lie on a line: at least three are needed to judge it");
        }

        Moments xs = Moments.Of(x);
        Moments ys = Moments.Of(y);
        return Indistinct(xs.SumOfSquares, x)
            ? new LineResult.NotFitted(EqualPlaces)
            : new LineResult.Fitted(AboutMeans(x, y, xs, ys));
    }

    /// <summary>
    /// Ordinary least squares through the origin: right where nothing in must give nothing out, and x is known far better
    /// than y.
    /// </summary>
    /// <inheritdoc cref="LeastSquares"/>
    public static LineResult LeastSquaresThroughOrigin(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        RequirePoints(x, y);
        double squares = Products(x, x);
        if (x.Length < 2)
        {
            return new LineResult.NotFitted("one point always lies on a line through the origin: at least two are needed");
        }

        return squares == 0
            ? new LineResult.NotFitted("all points have x = 0, so no slope can be told")
            : new LineResult.Fitted(AboutOrigin(x, y, squares));
    }

    /// <summary>
    /// The line by the maximum likelihood of points uncertain in both directions (York, Evensen, López Martínez and De
    /// Basabe Delgado, Am. J. Phys. 72 (2004) 367). The uncertainties are taken as given;
    /// <see cref="YorkLine.ReducedChiSquared"/> says whether the points agree with them.
    /// </summary>
    /// <param name="points">The points with their uncertainties.</param>
    /// <exception cref="ArgumentException">No points.</exception>
    public static YorkResult WithErrorsInBoth(IReadOnlyList<UncertainPoint> points) => York.Fit(points, false);

    /// <summary>The same for a line through the origin.</summary>
    /// <inheritdoc cref="WithErrorsInBoth"/>
    public static YorkResult ThroughOriginWithErrorsInBoth(IReadOnlyList<UncertainPoint> points) => York.Fit(points, true);

    internal static bool Indistinct(double sumOfSquares, ReadOnlySpan<double> x)
    {
        double largest = 0;
        foreach (double place in x)
        {
            largest = Math.Max(largest, Math.Abs(place));
        }

        double roundOff = 1e-15 * largest;
        return sumOfSquares <= roundOff * roundOff * x.Length;
    }

    private static LeastSquaresLine AboutMeans(ReadOnlySpan<double> x, ReadOnlySpan<double> y, Moments xs, Moments ys)
    {
        DoubleDouble products = 0;
        for (int i = 0; i < x.Length; i++)
        {
            products += DoubleDouble.Product(xs.DeviationOf(x[i]), ys.DeviationOf(y[i]));
        }

        double slope = products.High / xs.SumOfSquares;
        DoubleDouble residuals = 0;
        for (int i = 0; i < x.Length; i++)
        {
            double residual = Math.FusedMultiplyAdd(-slope, xs.DeviationOf(x[i]), ys.DeviationOf(y[i]));
            residuals += DoubleDouble.Product(residual, residual);
        }

        int degrees = x.Length - 2;
        double variance = residuals.High / degrees;
        var spread = new LineSpread(xs.Mean, variance / x.Length, variance / xs.SumOfSquares);
        double intercept = (ys.Mean - DoubleDouble.Product(slope, xs.Mean)).High;
        return new LeastSquaresLine(
            new FittedLine(intercept, slope, spread, degrees), residuals.High, ys.SumOfSquares, x.Length);
    }

    private static LeastSquaresLine AboutOrigin(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double squares)
    {
        double slope = Products(x, y) / squares;
        DoubleDouble residuals = 0;
        for (int i = 0; i < x.Length; i++)
        {
            double residual = Math.FusedMultiplyAdd(-slope, x[i], y[i]);
            residuals += DoubleDouble.Product(residual, residual);
        }

        int degrees = x.Length - 1;
        var spread = new LineSpread(0, 0, residuals.High / degrees / squares);
        return new LeastSquaresLine(
            new FittedLine(0, slope, spread, degrees), residuals.High, Products(y, y), x.Length);
    }

    private static double Products(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        DoubleDouble sum = 0;
        for (int i = 0; i < left.Length; i++)
        {
            sum += DoubleDouble.Product(left[i], right[i]);
        }

        return sum.High;
    }

    private static void RequirePoints(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        Require.Finite(x, 1);
        Require.Finite(y, 1);
        Require.SameLength(y, x.Length);
    }
}
