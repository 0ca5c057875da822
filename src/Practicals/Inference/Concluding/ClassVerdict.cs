using Calx.Measurement.Distributions;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>
/// What a class's readings say of a conclusion, from its groups' values: the sign test where a mass is said to move, two
/// one-sided tests where it is said to stay, and for a number the pooled value with odd groups set aside. The same rules as
/// for a class that has been taught (docs/methods/class-result.md), on numbers only. One belongs to one thread.
/// </summary>
internal sealed class ClassVerdict
{
    /// <summary>With fewer groups no split of signs is unlikely enough at 5 % two-sided, 2 · ½⁵ = 6 %.</summary>
    public const int FewestForSigns = 6;

    /// <summary>What chance would do less often than this it is taken not to have done.</summary>
    public const double Level = 0.05;

    private readonly double[] values;
    private readonly double[] errors;
    private readonly int[] splits;

    /// <summary>Prepares it for classes of so many groups.</summary>
    public ClassVerdict(int groups)
    {
        (values, errors) = (new double[groups], new double[groups]);
        splits = new int[groups + 1];
        for (int n = 1; n <= groups; n++)
        {
            splits[n] = LeastMajority(n);
        }
    }

    /// <summary>Judges whether a mass moves or stays.</summary>
    /// <param name="rule">The conclusion; one on a number is asked of <see cref="Pool"/> and <see cref="ConclusionRule.OfPooled"/>.</param>
    /// <param name="of">The quantity in each group; groups that have none are left out.</param>
    /// <param name="odd">Whether each group is odd: <see cref="OddGroups"/>.</param>
    /// <param name="divisionInGrams">The step of the coarsest balance.</param>
    public Bearing Of(ConclusionRule rule, ReadOnlySpan<MeasuredValue> of, ReadOnlySpan<bool> odd, double divisionInGrams) => rule.Test switch
    {
        ConclusionTest.Moves moves => Direction(of, odd, moves.Up),
        ConclusionTest.Stays => Sameness(of, odd, rule.BandInGrams(divisionInGrams)),
        _ => throw new ArgumentException("A number is pooled first.", nameof(rule)),
    };

    /// <summary>Pools a number over the groups that are not odd.</summary>
    /// <param name="of">The number in each group; groups that have none are left out.</param>
    /// <param name="odd">Whether each group is odd.</param>
    /// <param name="expectedBetween">How much groups of the practical differ in it: <see cref="ConclusionRule.ExpectedBetween"/>.</param>
    /// <param name="common">What all groups share: <see cref="ConclusionRule.Common"/>.</param>
    /// <returns>The pooled value, not found where no group is left, and how many of its uncertainties a 95 % interval reaches to
    /// either side.</returns>
    public (MeasuredValue Value, double CoverageFactor) Pool(ReadOnlySpan<MeasuredValue> of, ReadOnlySpan<bool> odd, double expectedBetween, CommonPart common)
    {
        int kept = Keep(of, odd);
        if (kept == 0)
        {
            return (new MeasuredValue(double.NaN, double.NaN), ConclusionRule.Normal95);
        }

        PooledResult pooled = RandomEffects.FromKnownUncertainties(values.AsSpan(0, kept), errors.AsSpan(0, kept), expectedBetween);
        (double u, double degrees) = common.With(pooled.StandardUncertainty, pooled.DegreesOfFreedom);
        return (new MeasuredValue(pooled.Value, u), CoverageFactors.Of(degrees));
    }

    /// <summary>The fewest of n signs one way whose split chance alone would not make.</summary>
    private static int LeastMajority(int n)
    {
        for (int most = (n / 2) + 1; most <= n; most++)
        {
            // P(X ≥ most) of a binomial with chance ½ is a regularised incomplete beta function of ½.
            if (2 * BetaFunction.RegularizedIncomplete(most, n - most + 1, 0.5) < Level)
            {
                return most;
            }
        }

        return int.MaxValue;
    }

    private Bearing Direction(ReadOnlySpan<MeasuredValue> of, ReadOnlySpan<bool> odd, bool up)
    {
        int rose = 0;
        int fell = 0;
        int found = 0;
        int kept = 0;
        double sum = 0;
        double variance = 0;
        for (int i = 0; i < of.Length; i++)
        {
            MeasuredValue value = of[i];
            if (!value.IsFound)
            {
                continue;
            }

            // What binary fractions leave of 'no change' is far below any division.
            rose += value.Value > 1e-10 ? 1 : 0;
            fell += value.Value < -1e-10 ? 1 : 0;
            found++;
            if (!odd[i])
            {
                kept++;
                sum += value.Value;
                variance += value.StandardUncertainty * value.StandardUncertainty;
            }
        }

        if (kept == 0)
        {
            return Bearing.Open;
        }

        if (found < FewestForSigns)
        {
            bool clear = Math.Abs(sum) > ConclusionRule.Normal95 * Math.Sqrt(variance);
            return !clear ? Bearing.Open : sum > 0 == up ? Bearing.Right : Bearing.Wrong;
        }

        int most = Math.Max(rose, fell);
        return rose + fell == 0 || most < splits[rose + fell] ? Bearing.Open : rose > fell == up ? Bearing.Right : Bearing.Wrong;
    }

    private Bearing Sameness(ReadOnlySpan<MeasuredValue> of, ReadOnlySpan<bool> odd, double bandInGrams)
    {
        int found = Keep(of, odd);
        double variance = 0;
        for (int i = 0; i < found; i++)
        {
            variance += errors[i] * errors[i];
        }

        if (found == 0)
        {
            return Bearing.Open;
        }

        (double Low, double High) band = (-bandInGrams, bandInGrams);
        ReadOnlySpan<double> known = values.AsSpan(0, found);
        EquivalenceResult result = found < FewestForSigns
            ? Equivalence.OfEstimate(Summary.Mean(known), Math.Sqrt(variance) / found, double.PositiveInfinity, band)
            : Equivalence.OfMean(known, band.Low, band.High);
        return result switch
        {
            EquivalenceResult.WithinBounds => Bearing.Right,
            EquivalenceResult.BeyondBounds => Bearing.Wrong,
            _ => Bearing.Open,
        };
    }

    /// <summary>The values of the groups that are not odd, side by side.</summary>
    private int Keep(ReadOnlySpan<MeasuredValue> of, ReadOnlySpan<bool> odd)
    {
        int kept = 0;
        for (int i = 0; i < of.Length; i++)
        {
            if (of[i].IsFound && !odd[i])
            {
                (values[kept], errors[kept]) = (of[i].Value, of[i].StandardUncertainty);
                kept++;
            }
        }

        return kept;
    }
}
