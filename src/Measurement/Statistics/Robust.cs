using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Estimates that draw values far out back to a limit instead of dropping them. They stand up to nearly half the values
/// being wild on both sides, to fewer on one side.
/// </summary>
public static class Robust
{
    /// <summary>The limit of 1.5 robust standard deviations that ISO 13528 and Huber's proposal 2 commonly use.</summary>
    public const double UsualLimit = 1.5;

    /// <summary>
    /// Huber's proposal 2 (Huber, Robust Statistics (1981), 6.4) with divisor n - 1: values beyond
    /// <paramref name="limit"/> scales are drawn in to it; mean and standard deviation of the drawn-in values, the latter
    /// corrected for what drawing in takes from normal data, are the next centre and scale.
    /// </summary>
    /// <param name="values">Two values or more.</param>
    /// <param name="limit">How many scales from the centre values may stand; above 0.</param>
    /// <exception cref="ArgumentException">Fewer than two values, or one not finite.</exception>
    /// <exception cref="ArithmeticException">The iteration did not settle.</exception>
    public static RobustResult HuberProposal2(ReadOnlySpan<double> values, double limit = UsualLimit)
    {
        Require.Finite(values, 2);
        Require.Positive(limit);
        double inside = 1 - (2 * StandardNormal.UpperTail(limit));
        double density = StandardNormal.Density(limit);
        double left = inside + (limit * limit * (1 - inside)) - (2 * limit * density);
        return new Winsorizing(values, limit, 1 / Math.Sqrt(left)).Settle(1.4826);
    }

    /// <summary>
    /// Algorithm A of ISO 13528:2015, C.3 (and ISO 5725-5): as <see cref="HuberProposal2"/> with limit 1.5 and the
    /// factor rounded to 1.134, so its scale is 0.06 % larger; iterated until nothing moves, where the standards' worked
    /// examples stop earlier.
    /// </summary>
    /// <inheritdoc cref="HuberProposal2"/>
    public static RobustResult AlgorithmA(ReadOnlySpan<double> values)
    {
        Require.Finite(values, 2);
        return new Winsorizing(values, UsualLimit, 1.134).Settle(1.483);
    }
}
