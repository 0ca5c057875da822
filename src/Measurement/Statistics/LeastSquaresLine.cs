using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>A line by ordinary least squares: x exact, the same unknown scatter of y everywhere.</summary>
public sealed class LeastSquaresLine
{
    internal LeastSquaresLine(FittedLine line, double residualSquares, double totalSquares, int count)
    {
        Line = line;
        Count = count;
        ResidualSumOfSquares = residualSquares;
        TotalSumOfSquares = totalSquares;
    }

    /// <summary>The line and its uncertainty.</summary>
    public FittedLine Line { get; }

    /// <summary>How many points.</summary>
    public int Count { get; }

    /// <summary>Points less parameters.</summary>
    public double DegreesOfFreedom => Line.DegreesOfFreedom;

    /// <summary>The sum of squared vertical distances from the line.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>The sum of squares of y about its mean; about 0 for a line through the origin.</summary>
    public double TotalSumOfSquares { get; }

    /// <summary>The standard deviation of y about the line, in the unit of y.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom);

    /// <summary>
    /// The share of the sum of squares that the line explains, 0 to 1. 0 where y does not vary. For a line through the
    /// origin it counts from 0, not from the mean, and is not comparable with that of a line with an intercept.
    /// </summary>
    public double RSquared => TotalSumOfSquares > 0 ? Math.Max(0, 1 - (ResidualSumOfSquares / TotalSumOfSquares)) : 0;

    /// <summary>The F of the slope on 1 and <see cref="DegreesOfFreedom"/>; +∞ where all points lie on a sloping line.</summary>
    public double FStatistic
    {
        get
        {
            double explained = Math.Max(0, TotalSumOfSquares - ResidualSumOfSquares);
            return explained == 0 ? 0 : explained / (ResidualSumOfSquares / DegreesOfFreedom);
        }
    }

    /// <summary>The chance of such an F or more if y did not depend on x.</summary>
    public double FProbability => FisherF.UpperTail(FStatistic, 1, DegreesOfFreedom);

    /// <summary>Where a new reading at <paramref name="x"/> would fall: the line's uncertainty and the scatter about it.</summary>
    /// <exception cref="ArgumentException"><paramref name="x"/> is not finite.</exception>
    public LinePoint NewReadingAt(double x)
    {
        LinePoint point = Line.At(x);
        double uncertainty = double.Hypot(point.StandardUncertainty, ResidualStandardDeviation);
        return new LinePoint(x, point.Value, uncertainty, DegreesOfFreedom);
    }
}

/// <summary>Whether a line could be fitted by least squares.</summary>
public abstract record LineResult
{
    private LineResult()
    {
    }

    /// <summary>There is a line.</summary>
    public sealed record Fitted : LineResult
    {
        internal Fitted(LeastSquaresLine fit) => Fit = fit;

        /// <summary>The line and how well it fits.</summary>
        public LeastSquaresLine Fit { get; }
    }

    /// <summary>The points do not determine a line and its uncertainty.</summary>
    public sealed record NotFitted : LineResult
    {
        internal NotFitted(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
