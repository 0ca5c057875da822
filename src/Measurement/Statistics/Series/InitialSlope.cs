using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics.Series;

/// <summary>The slope at the first reading by a parabola through the first readings, whatever the order of the curve.</summary>
public sealed class InitialSlope
{
    // Over the first third of a change a parabola's slope at the start is off by 0.6 h²/6 of itself for an exponential, where
    // h = -ln(2/3): the error of leaving out the cubic term.
    private const double ShareUsed = 1.0 / 3;
    private const double LeftOut = 0.0164;
    private const int Fewest = 5;

    private InitialSlope(double slope, double scatter, double degrees, int count)
    {
        Slope = slope;
        double curvature = LeftOut * Math.Abs(slope) / Math.Sqrt(3);
        StandardUncertainty = Math.Sqrt((scatter * scatter) + (curvature * curvature));
        DegreesOfFreedom = degrees;
        ReadingsUsed = count;
    }

    /// <summary>Reading per time; negative where the readings fall.</summary>
    public double Slope { get; }

    /// <summary>From the scatter about the parabola, and what the parabola leaves out of an exponential curve.</summary>
    public double StandardUncertainty { get; }

    /// <summary>Readings used less three.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>How many readings, from the first on, the parabola goes through.</summary>
    public int ReadingsUsed { get; }

    /// <summary>The interval of the slope by Student's t.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverage"/> is not between 0 and 1.</exception>
    public CoverageInterval Interval(double coverage)
    {
        Require.Probability(coverage);
        double half = -StudentT.Quantile((1 - coverage) / 2, DegreesOfFreedom) * StandardUncertainty;
        return new CoverageInterval(Slope - half, Slope + half, coverage);
    }

    /// <summary>Finds it from the readings over which the first third of the change goes by, five at least.</summary>
    public static InitialSlopeResult Of(TimeSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        double[] times = [.. series.Times];
        double[] values = [.. series.Values];
        double whole = Math.Abs(Median(values[^Math.Min(3, values.Length)..]) - values[0]);
        int count = values.Length;
        // The last reading before the change has passed its third for good, so that one odd reading does not end the stretch.
        for (int i = values.Length - 1; i >= 0 && Math.Abs(values[i] - values[0]) > ShareUsed * whole; i--)
        {
            count = i;
        }

        if (count < Fewest || whole == 0)
        {
            return new InitialSlopeResult.NotFound(whole == 0
                ? "the readings end where they began"
                : $"only {count} readings fall into the first third of the change: at least {Fewest} are needed");
        }

        double[] elapsed = [.. times[..count].Select(time => time - times[0])];
        return LinearLeastSquares.Polynomial(elapsed, values.AsSpan(0, count), 2) is LinearFitResult.Fitted { Fit: var fit }
            ? new InitialSlopeResult.Found(new InitialSlope(
                fit.Coefficients[1],
                Math.Sqrt(fit.Covariance(1, 1) * Math.Max(1, Rounding(series, fit))),
                fit.ResidualDegreesOfFreedom,
                count))
            : new InitialSlopeResult.NotFound("the times do not determine a parabola");
    }

    // Readings that lie on the parabola to the last digit are still rounded.
    private static double Rounding(TimeSeries series, LinearFit fit)
    {
        double variance = fit.ResidualSumOfSquares / fit.ResidualDegreesOfFreedom;
        double rounding = series.Resolution * series.Resolution / 12;
        return variance > 0 ? rounding / variance : 1;
    }

    private static double Median(double[] values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }
}

/// <summary>Whether the first readings determine a slope.</summary>
public abstract record InitialSlopeResult
{
    private InitialSlopeResult()
    {
    }

    /// <summary>They do.</summary>
    public sealed record Found : InitialSlopeResult
    {
        internal Found(InitialSlope slope) => Slope = slope;

        /// <summary>The slope.</summary>
        public InitialSlope Slope { get; }
    }

    /// <summary>They do not.</summary>
    public sealed record NotFound : InitialSlopeResult
    {
        internal NotFound(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
