using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Is the mean difference 0? The Fisher-Pitman test: if it is, each difference might as well have had the other sign, and
/// the observed sum is one of 2ⁿ equally likely ones. It assumes only that differences spread alike to both sides.
/// </summary>
public static class SignFlipTest
{
    /// <summary>Up to so many differences all sign patterns are counted, whatever the values.</summary>
    public const int MostCounted = 40;

    /// <summary>Beyond that, how many sign patterns are drawn unless asked otherwise.</summary>
    public const int UsualDraws = 100_000;

    /// <summary>So many additions take well under a second.</summary>
    private const long MostAdditions = 200_000_000;

    /// <summary>
    /// Tests differences of readings, exact as written: all sign patterns are counted for any number of differences as long
    /// as their sum is a moderate number of divisions, which for balance readings it is.
    /// </summary>
    /// <param name="differences">The differences, such as mass after less mass before.</param>
    /// <param name="seed">Fixes the sample of patterns where they cannot be counted.</param>
    /// <param name="draws">How many patterns are then drawn, 1 or more.</param>
    /// <exception cref="ArgumentException">No differences.</exception>
    public static PermutationResult Of(ReadOnlySpan<decimal> differences, ulong seed, int draws = UsualDraws)
    {
        if (WholeNumbers.Of(differences) is { } whole && Affordable(whole))
        {
            return whole.All(value => value == 0) ? EveryDifferenceIsZero() : CountedSums(whole);
        }

        double[] rounded = new double[differences.Length];
        for (int i = 0; i < rounded.Length; i++)
        {
            rounded[i] = (double)differences[i];
        }

        return Of(rounded, seed, draws);
    }

    /// <summary>Tests differences of computed values: exact up to <see cref="MostCounted"/> of them, sampled beyond.</summary>
    /// <param name="differences">The differences.</param>
    /// <param name="seed">Fixes the sample of patterns where they cannot be counted.</param>
    /// <param name="draws">How many patterns are then drawn, 1 or more.</param>
    /// <exception cref="ArgumentException">No differences, or one not finite.</exception>
    public static PermutationResult Of(ReadOnlySpan<double> differences, ulong seed, int draws = UsualDraws)
    {
        Require.Finite(differences, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        double[] sizes = Array.ConvertAll(differences.ToArray(), Math.Abs);
        if (sizes.Max() == 0)
        {
            return EveryDifferenceIsZero();
        }

        double observed = 0;
        foreach (double difference in differences)
        {
            observed += difference;
        }

        // Sums that differ by rounding only are ties, and ties count for the tail.
        double tie = 1e-12 * sizes.Sum();
        return sizes.Length <= MostCounted
            ? new PermutationResult.Exact(Tails(observed - tie, observed + tie, new HalvedSums(sizes).AtLeast))
            : new PermutationResult.Sampled(SampledTails(sizes, observed, tie, new RandomStream(seed, 0), draws), draws);
    }

    // The distribution of the sum is symmetrical about 0, so one tail gives the other.
    private static PermutationTails Tails(double least, double most, Func<double, double> atLeast)
    {
        double upper = atLeast(least);
        double lower = atLeast(-most);
        return new PermutationTails(upper, lower, 2 * Math.Min(upper, lower));
    }

    private static PermutationResult.NotTested EveryDifferenceIsZero() => new("every difference is 0");

    private static bool Affordable(int[] whole) =>
        whole.Length > 0 && whole.Sum(value => Math.Abs((double)value)) * whole.Length <= MostAdditions;

    private static PermutationResult.Exact CountedSums(int[] whole)
    {
        int[] sizes = Array.ConvertAll(whole, Math.Abs);
        int total = sizes.Sum();
        double[] chances = new double[total + 1];
        chances[0] = 1;
        int reached = 0;
        foreach (int size in sizes)
        {
            reached += size;
            for (int sum = reached; sum >= 0; sum--)
            {
                chances[sum] = 0.5 * (chances[sum] + (sum >= size ? chances[sum - size] : 0));
            }
        }

        // A signed sum is twice the sum of those with + less the total.
        return new PermutationResult.Exact(Tails(
            whole.Sum(), whole.Sum(), least => chances.AsSpan((int)((least + total) / 2)).ToArray().Sum()));
    }

    private static PermutationTails SampledTails(
        double[] sizes, double observed, double tie, RandomStream random, int draws)
    {
        int upper = 1;
        int lower = 1;
        for (int draw = 0; draw < draws; draw++)
        {
            double sum = SignedSum(sizes, random);
            upper += sum >= observed - tie ? 1 : 0;
            lower += sum <= observed + tie ? 1 : 0;
        }

        double all = draws + 1.0;
        return new PermutationTails(upper / all, lower / all, 2 * Math.Min(upper, lower) / all);
    }

    private static double SignedSum(double[] sizes, RandomStream random)
    {
        double sum = 0;
        ulong bits = 0;
        for (int i = 0; i < sizes.Length; i++)
        {
            bits = i % 64 == 0 ? random.NextUInt64() : bits >> 1;
            sum += (bits & 1) == 0 ? sizes[i] : -sizes[i];
        }

        return sum;
    }
}
