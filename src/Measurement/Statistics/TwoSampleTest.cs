using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Have two lists one mean? The permutation test: if they came from one source, any division of all the values into lists
/// of these sizes was as likely, and the observed difference of means is one of many. Chances are of first less second.
/// </summary>
public static class TwoSampleTest
{
    /// <summary>Up to so many divisions each is counted, whatever the values.</summary>
    public const int MostCounted = 3_000_000;

    private const long MostAdditions = 200_000_000;

    /// <summary>Beyond this the number of divisions is no longer a double.</summary>
    private const int MostValues = 1000;

    /// <summary>Tests readings, exact as written: counted by sums of divisions where there are too many to list.</summary>
    /// <param name="first">One list.</param>
    /// <param name="second">The other.</param>
    /// <param name="seed">Fixes the sample of divisions where they cannot be counted.</param>
    /// <param name="draws">How many divisions are then drawn, 1 or more.</param>
    /// <exception cref="ArgumentException">A list is empty.</exception>
    public static PermutationResult Of(
        ReadOnlySpan<decimal> first,
        ReadOnlySpan<decimal> second,
        ulong seed,
        int draws = SignFlipTest.UsualDraws)
    {
        decimal[] all = [.. first, .. second];
        decimal least = all.Length == 0 ? 0 : all.Min();
        if (first.Length > 0 && second.Length > 0
            && WholeNumbers.Of(Array.ConvertAll(all, value => value - least)) is { } whole
            && Affordable(whole, first.Length))
        {
            return whole.Max() == 0 ? EveryValueIsEqual() : CountedSums(whole, first.Length);
        }

        double[] rounded = Array.ConvertAll(all, value => (double)(value - least));
        return Of(rounded.AsSpan(0, first.Length), rounded.AsSpan(first.Length), seed, draws);
    }

    /// <summary>Tests computed values: exact up to <see cref="MostCounted"/> divisions, sampled beyond.</summary>
    /// <param name="first">One list.</param>
    /// <param name="second">The other.</param>
    /// <param name="seed">Fixes the sample of divisions where they cannot be counted.</param>
    /// <param name="draws">How many divisions are then drawn, 1 or more.</param>
    /// <exception cref="ArgumentException">A list is empty or holds a number that is not finite.</exception>
    public static PermutationResult Of(
        ReadOnlySpan<double> first,
        ReadOnlySpan<double> second,
        ulong seed,
        int draws = SignFlipTest.UsualDraws)
    {
        Require.Finite(first, 1);
        Require.Finite(second, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        double[] all = [.. first, .. second];
        double mean = Summary.Mean(all);
        double[] offsets = Array.ConvertAll(all, value => value - mean);
        if (offsets.Max() - offsets.Min() == 0)
        {
            return EveryValueIsEqual();
        }

        var divisions = new Divisions(offsets, first.Length);
        return divisions.Count <= MostCounted
            ? new PermutationResult.Exact(divisions.CountAll())
            : new PermutationResult.Sampled(divisions.Sample(new RandomStream(seed, 0), draws), draws);
    }

    private static PermutationResult.NotTested EveryValueIsEqual() => new("all values are equal");

    private static bool Affordable(int[] whole, int size)
    {
        long largest = whole.OrderDescending().Take(size).Sum(value => (long)value);
        return whole.Length <= MostValues && (largest + 1) * size * whole.Length <= MostAdditions;
    }

    private static PermutationResult.Exact CountedSums(int[] whole, int size)
    {
        double[] counts = Counts(whole, size);
        long observed = whole.Take(size).Sum(value => (long)value);
        long total = whole.Sum(value => (long)value);
        double upper = 0;
        double lower = 0;
        double far = 0;
        for (int sum = 0; sum < counts.Length; sum++)
        {
            upper += sum >= observed ? counts[sum] : 0;
            lower += sum <= observed ? counts[sum] : 0;
            // Distances from the expected sum, times the number of values to stay whole.
            far += Distance(sum) >= Distance(observed) ? counts[sum] : 0;
        }

        double all = counts.Sum();
        return new PermutationResult.Exact(new PermutationTails(upper / all, lower / all, far / all));

        long Distance(long sum) => Math.Abs((sum * whole.Length) - (total * size));
    }

    // counts[k][s]: how many ways to choose k of the values seen so far with sum s.
    private static double[] Counts(int[] whole, int size)
    {
        int largest = (int)whole.OrderDescending().Take(size).Sum(value => (long)value);
        double[][] counts = [.. Enumerable.Range(0, size + 1).Select(_ => new double[largest + 1])];
        counts[0][0] = 1;
        for (int i = 0; i < whole.Length; i++)
        {
            for (int chosen = Math.Min(size, i + 1); chosen > 0; chosen--)
            {
                AddShifted(counts[chosen - 1], counts[chosen], whole[i]);
            }
        }

        return counts[size];
    }

    private static void AddShifted(double[] from, double[] to, int shift)
    {
        for (int sum = to.Length - 1; sum >= shift; sum--)
        {
            to[sum] += from[sum - shift];
        }
    }
}
