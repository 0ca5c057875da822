using Calx.Measurement.Distributions;

namespace Calx.Measurement.Weighing;

/// <summary>
/// The probability that a normally distributed quantity, rounded to a whole number of steps, shows a given value:
/// Φ((r + d/2 − m)/s) − Φ((r − d/2 − m)/s). In logarithms it stays exact hundreds of standard deviations out, where
/// the probability itself is below the smallest double.
/// </summary>
/// <remarks>
/// Two ways of taking the difference, so that neither cancels: narrow steps are integrated with a Gauss–Legendre rule
/// about the middle; wide ones use the tail functions on the side where they are small.
/// Without noise the law is pure rounding, and a quantity exactly half way between two values shows either with
/// probability one half, which is the limit of the formula as the noise vanishes. 'Exactly' there means within a
/// billionth of a step, because a decimal half is seldom a binary one.
/// </remarks>
public static class RoundedNormal
{
    private const double TieInSteps = 1e-9;
    private const double HalfLogTwoPi = 0.91893853320467274178;

    // Beyond 5 standard deviations thirty terms of the continued fraction of Mills' ratio reach double precision.
    private const double FarTail = 5;
    private const int TailTerms = 30;

    /// <summary>Natural logarithm of the probability; −∞ where the probability is 0.</summary>
    /// <param name="shown">The rounded value r; the caller vouches that it is a whole number of steps.</param>
    /// <param name="step">The rounding step d, above 0.</param>
    /// <param name="mean">The quantity's mean m.</param>
    /// <param name="standardDeviation">The noise s before rounding, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not finite or is out of range.</exception>
    public static double LogProbability(double shown, double step, double mean, double standardDeviation)
    {
        Guard(shown, step, mean, standardDeviation);
        if (standardDeviation == 0)
        {
            return Math.Log(PureRounding(shown, step, mean));
        }

        return LogBetween(Math.Abs(shown - mean) / standardDeviation, step / (2 * standardDeviation));
    }

    /// <summary>The probability, 0 to 1; 0 where it is below the smallest double.</summary>
    /// <inheritdoc cref="LogProbability"/>
    public static double Probability(double shown, double step, double mean, double standardDeviation) =>
        Math.Exp(LogProbability(shown, step, mean, standardDeviation));

    private static void Guard(double shown, double step, double mean, double standardDeviation)
    {
        if (!double.IsFinite(shown) || !double.IsFinite(mean))
        {
            throw new ArgumentOutOfRangeException(nameof(shown), "The value shown and the mean must be finite.");
        }

        if (!(step > 0) || !double.IsFinite(step))
        {
            throw new ArgumentOutOfRangeException(nameof(step), step, "A rounding step is above 0.");
        }

        if (!(standardDeviation >= 0) || !double.IsFinite(standardDeviation))
        {
            throw new ArgumentOutOfRangeException(
                nameof(standardDeviation), standardDeviation, "A standard deviation is 0 or more.");
        }
    }

    private static double PureRounding(double shown, double step, double mean)
    {
        double stepsFromEdge = (Math.Abs(shown - mean) / step) - 0.5;
        if (Math.Abs(stepsFromEdge) <= TieInSteps)
        {
            return 0.5;
        }

        return stepsFromEdge < 0 ? 1 : 0;
    }

    /// <summary>Log of the standard normal mass within <paramref name="half"/> of <paramref name="centre"/> ≥ 0.</summary>
    private static double LogBetween(double centre, double half)
    {
        if (2 * half * Math.Max(1, centre) < 1)
        {
            return LogNarrow(centre, 2 * half);
        }

        double low = centre - half;
        double high = centre + half;
        if (low <= 0)
        {
            return SmallDifferences.LogOnePlus(-(StandardNormal.UpperTail(-low) + StandardNormal.UpperTail(high)));
        }

        return low < FarTail
            ? Math.Log(StandardNormal.UpperTail(low) - StandardNormal.UpperTail(high))
            : -(low * low / 2) - HalfLogTwoPi + Math.Log(Mills(low) - (Math.Exp(-2 * centre * half) * Mills(high)));
    }

    /// <summary>φ(c) w times the mean of exp(−cwu − w²u²/2) over −½ &lt; u &lt; ½, by the six-point Gauss rule.</summary>
    private static double LogNarrow(double centre, double width)
    {
        double mean = (0.46791393457269104739 * Pair(0.11930959304159845327))
            + (0.36076157304813860757 * Pair(0.33060469323313225683))
            + (0.17132449237917034504 * Pair(0.46623475710157601391));
        return -(centre * centre / 2) - HalfLogTwoPi + Math.Log(width * mean);

        double Pair(double u) => Math.Exp(-(width * width * u * u) / 2) * Math.Cosh(centre * width * u);
    }

    /// <summary>Mills' ratio, upper tail over density, for z of at least <see cref="FarTail"/>.</summary>
    private static double Mills(double z)
    {
        double fraction = z;
        for (int term = TailTerms; term > 0; term--)
        {
            fraction = z + (term / fraction);
        }

        return 1 / fraction;
    }
}
