namespace Calx.Measurement.Statistics;

/// <summary>
/// All 2ⁿ signed sums of n sizes without listing them: the sums of each half, sorted, and for every sum of one half the
/// place in the other from which on the two together are large enough (Horowitz and Sahni, J. ACM 21 (1974) 277).
/// </summary>
internal sealed class HalvedSums(double[] sizes)
{
    private readonly double[] first = SortedSums(sizes.AsSpan(0, sizes.Length / 2));
    private readonly double[] second = SortedSums(sizes.AsSpan(sizes.Length / 2));

    /// <summary>The share of signed sums that are <paramref name="least"/> or more.</summary>
    public double AtLeast(double least)
    {
        double count = 0;
        int place = second.Length;
        foreach (double sum in first)
        {
            while (place > 0 && sum + second[place - 1] >= least)
            {
                place--;
            }

            count += second.Length - place;
        }

        return count / first.Length / second.Length;
    }

    // Adding a size to every sum keeps their order, so each further size merges two sorted lists.
    private static double[] SortedSums(ReadOnlySpan<double> sizes)
    {
        double[] sums = [0];
        foreach (double size in sizes)
        {
            double[] lower = Array.ConvertAll(sums, sum => sum - size);
            double[] upper = Array.ConvertAll(sums, sum => sum + size);
            sums = Merge(lower, upper);
        }

        return sums;
    }

    private static double[] Merge(double[] left, double[] right)
    {
        double[] merged = new double[left.Length + right.Length];
        int i = 0;
        int j = 0;
        for (int k = 0; k < merged.Length; k++)
        {
            bool takeLeft = j == right.Length || (i < left.Length && left[i] <= right[j]);
            merged[k] = takeLeft ? left[i++] : right[j++];
        }

        return merged;
    }
}
