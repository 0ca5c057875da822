namespace Calx.Measurement.Distributions;

/// <summary>
/// The PERT law of a duration: a beta distribution between the least and the most with shapes 1 + 4 (likely − least) /
/// (most − least) and 1 + 4 (most − likely) / (most − least), so that its mean is (least + 4 likely + most) / 6 (D. G. Malcolm,
/// J. H. Roseboom, C. E. Clark and W. Fazar, Operations Research 7 (1959) 646). Safe for several threads.
/// </summary>
public sealed class Pert
{
    private readonly double alpha;
    private readonly double beta;
    private readonly QuantileTable table;

    /// <summary>A duration from three estimates, in any one unit.</summary>
    /// <param name="least">The least.</param>
    /// <param name="likely">The likeliest, from the least to the most.</param>
    /// <param name="most">The most; where it equals the least, the duration is certain.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or they do not rise.</exception>
    public Pert(double least, double likely, double most)
    {
        if (!(double.IsFinite(least) && double.IsFinite(most) && least <= likely && likely <= most))
        {
            throw new ArgumentOutOfRangeException(nameof(likely), likely, "Three finite numbers are expected that rise from the least to the most.");
        }

        Least = least;
        Likely = likely;
        Most = most;
        alpha = most > least ? 1 + (4 * (likely - least) / (most - least)) : 1;
        beta = most > least ? 1 + (4 * (most - likely) / (most - least)) : 1;
        table = new QuantileTable(Quantile);
    }

    /// <summary>The least duration.</summary>
    public double Least { get; }

    /// <summary>The likeliest.</summary>
    public double Likely { get; }

    /// <summary>The most.</summary>
    public double Most { get; }

    /// <summary>The mean.</summary>
    public double Mean => (Least + (4 * Likely) + Most) / 6;

    /// <summary>The standard deviation: of the beta law itself, not the sixth of the range that is often taken for it.</summary>
    public double StandardDeviation =>
        (Most - Least) * Math.Sqrt(alpha * beta / ((alpha + beta) * (alpha + beta) * (alpha + beta + 1)));

    /// <summary>The probability of a duration of at most <paramref name="value"/>.</summary>
    public double Cumulative(double value) =>
        value >= Most ? 1 : value <= Least ? 0 : BetaFunction.RegularizedIncomplete(alpha, beta, (value - Least) / (Most - Least));

    /// <summary>The duration that is not exceeded with a probability above 0 and below 1.</summary>
    public double Quantile(double p) => Most > Least ? Least + ((Most - Least) * BetaFunction.Quantile(alpha, beta, p)) : Least;

    /// <summary>The quantile for millions of draws, within 5 · 10⁻⁴ of the range.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    public double QuickQuantile(double p) => Most == Least ? Least : table.At(p);
}
