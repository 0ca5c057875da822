using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// The distribution of one of Dixon's ratios for values from a normal distribution, by numerical integration. Given the
/// largest value c and the one at the other end of the range, a = c - v, the m values between them are independent, and
/// the ratio exceeds r exactly when at most i - 1 of them lie above c - rv. So the upper tail is a double integral over c
/// and v, taken by the trapezoidal rule in c and ln v, which for such smooth integrands has all figures at these steps.
/// Against the closed form for three values it agrees to ten figures.
/// </summary>
public sealed class DixonDistribution
{
    private const double Step = 0.25;
    private const double LogStep = 0.125;
    private const double Lowest = -6.5;
    private const double Highest = 7.5;

    /// <summary>Points whose two densities multiply to less than e to the minus this add nothing to twelve figures.</summary>
    private const double Negligible = 40;

    private readonly int count;
    private readonly int gap;
    private readonly int left;

    /// <summary>The distribution for a number of values and a ratio.</summary>
    /// <param name="count">How many values; at least 3, 4, 5 and 6 for the four ratios.</param>
    /// <param name="ratio">Which ratio.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too few values for the ratio.</exception>
    public DixonDistribution(int count, DixonRatio ratio)
    {
        gap = ratio is DixonRatio.R10 or DixonRatio.R11 ? 1 : 2;
        left = ratio switch
        {
            DixonRatio.R10 => 0,
            DixonRatio.R22 => 2,
            _ => 1,
        };
        ArgumentOutOfRangeException.ThrowIfLessThan(count, gap + left + 2);
        this.count = count;
    }

    private int Between => count - left - 2;

    /// <summary>The chance of a ratio above <paramref name="ratio"/> for an end named beforehand.</summary>
    /// <exception cref="ArgumentException"><paramref name="ratio"/> is not finite.</exception>
    public double UpperTail(double ratio)
    {
        Require.Finite([ratio], 1);
        return ratio switch
        {
            <= 0 => 1,
            >= 1 => 0,
            _ => Math.Min(1, Integral(ratio)),
        };
    }

    /// <summary>The ratio that is passed with the chance <paramref name="upper"/>, between 0 and 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="upper"/> is not between 0 and 1.</exception>
    public double Point(double upper)
    {
        Require.Probability(upper);
        return Root.Between(ratio => UpperTail(ratio) - upper, 0, 1);
    }

    internal double RatioOfLargest(ReadOnlySpan<double> ascending) =>
        (ascending[^1] - ascending[^(1 + gap)]) / (ascending[^1] - ascending[left]);

    internal double RatioOfSmallest(ReadOnlySpan<double> ascending) =>
        (ascending[gap] - ascending[0]) / (ascending[^(1 + left)] - ascending[0]);

    private double Integral(double ratio)
    {
        double mostLogRange = Math.Log(Highest - Lowest);
        double leastLogRange = LeastLogRange();
        double sum = 0;
        for (double log = leastLogRange; log <= mostLogRange; log += LogStep)
        {
            double range = Math.Exp(log);
            for (double largest = Lowest; largest <= Highest; largest += Step)
            {
                sum += range * Inner(largest, range, ratio);
            }
        }

        return sum * Step * LogStep * Arrangements();
    }

    // The m values between and the range itself make the integrand fall as range^(m+1) towards 0.
    private double LeastLogRange() => -(26 + Math.Log(Arrangements())) / (Between + 1);

    private double Inner(double largest, double range, double ratio)
    {
        double low = largest - range;
        if ((largest * largest) + (low * low) > 2 * Negligible)
        {
            return 0;
        }

        double edge = largest - (ratio * range);
        double kept = Chance(low, edge);
        double inside = Math.Pow(kept, Between);
        inside += gap == 2 ? Between * Math.Pow(kept, Between - 1) * Chance(edge, largest) : 0;
        double beyond = Math.Pow(StandardNormal.Cumulative(low), left);
        return StandardNormal.Density(largest) * StandardNormal.Density(low) * beyond * inside;
    }

    // n!/(j! m!): which values lie beyond, at the two ends, and between.
    private double Arrangements() => left switch
    {
        0 => count * (count - 1.0),
        1 => count * (count - 1.0) * (count - 2),
        _ => count * (count - 1.0) * (count - 2) * (count - 3) / 2,
    };

    // Taken from the nearer tail, so that two points far out do not cancel.
    private static double Chance(double from, double to) =>
        from > 0
            ? StandardNormal.UpperTail(from) - StandardNormal.UpperTail(to)
            : StandardNormal.Cumulative(to) - StandardNormal.Cumulative(from);
}
