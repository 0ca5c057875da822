using Calx.Measurement.Distributions;

namespace Calx.Practicals.Inference.Concluding;

/// <summary>
/// Which groups of a class are odd: impossible ones, then those far from the others' median by the modified z-score (B. Iglewicz
/// and D. C. Hoaglin, How to Detect and Handle Outliers, 1993). One belongs to one thread.
/// </summary>
internal sealed class OddGroups(int groups)
{
    /// <summary>Iglewicz and Hoaglin's limit for the modified z-score.</summary>
    public const double Limit = 3.5;

    /// <summary>With fewer groups than this a median and its scatter say nothing of one of them (judgement).</summary>
    public const int FewestForScatter = 5;

    /// <summary>The limit for one of several quantities, so that a sound class has as few false alarms in all of them together as one has at
    /// <see cref="Limit"/> in one. A power of their number, fitted to simulated normal values and never below them
    /// (docs/methods/class-result.md).</summary>
    /// <param name="groups">Groups that are judged.</param>
    /// <param name="quantities">In how many quantities the class is searched.</param>
    public static double LimitOf(int groups, int quantities) =>
        quantities == 1 ? Limit : Limit * Math.Pow(quantities, 0.07 + (2.3 / (groups - 1)));

    private static readonly double Quartile = StandardNormal.Quantile(0.75);

    private readonly double[] sorted = new double[groups];

    /// <summary>Marks them.</summary>
    /// <param name="judged">The value by which groups are judged, such as the practical's key quantity.</param>
    /// <param name="odd">Whether each group's readings are impossible; receives whether the group is odd.</param>
    /// <param name="quantities">In how many quantities the class is searched.</param>
    public void Mark(ReadOnlySpan<MeasuredValue> judged, Span<bool> odd, int quantities = 1)
    {
        int possible = 0;
        for (int i = 0; i < judged.Length; i++)
        {
            if (judged[i].IsFound && !odd[i])
            {
                sorted[possible++] = judged[i].Value;
            }
        }

        if (possible < FewestForScatter)
        {
            return;
        }

        double median = Median(possible);
        // Never less than what the balance alone scatters: groups that agree by luck make nobody odd.
        double scale = Math.Max(Deviation(judged, odd, median), Own(judged, odd));
        double limit = LimitOf(possible, quantities);
        for (int i = 0; i < judged.Length; i++)
        {
            odd[i] |= judged[i].IsFound && Math.Abs(judged[i].Value - median) > limit * scale;
        }
    }

    /// <summary>The median distance from the median, times the factor that makes it the standard deviation of a normal law.</summary>
    private double Deviation(ReadOnlySpan<MeasuredValue> judged, ReadOnlySpan<bool> odd, double median)
    {
        int count = 0;
        for (int i = 0; i < judged.Length; i++)
        {
            if (judged[i].IsFound && !odd[i])
            {
                sorted[count++] = Math.Abs(judged[i].Value - median);
            }
        }

        return Median(count) / Quartile;
    }

    private double Own(ReadOnlySpan<MeasuredValue> judged, ReadOnlySpan<bool> odd)
    {
        int count = 0;
        for (int i = 0; i < judged.Length; i++)
        {
            if (judged[i].IsFound && !odd[i])
            {
                sorted[count++] = judged[i].StandardUncertainty;
            }
        }

        return Median(count);
    }

    private double Median(int count)
    {
        sorted.AsSpan(0, count).Sort();
        return count % 2 == 1 ? sorted[count / 2] : (sorted[(count / 2) - 1] + sorted[count / 2]) / 2;
    }
}
