namespace Calx.Measurement.Statistics;

/// <summary>
/// Dixon's ratios, the gap beside the extreme value over a range: (x_n - x_{n-i})/(x_n - x_{1+j}) for the largest of
/// ordered values, mirrored for the smallest (Dixon, Biometrics 9 (1953) 74).
/// </summary>
public enum DixonRatio
{
    /// <summary>i = 1, j = 0: the gap to the next value over the whole range; known as Q. For 3 to 7 values.</summary>
    R10,

    /// <summary>i = 1, j = 1: leaves the other end out. For 8 to 10 values.</summary>
    R11,

    /// <summary>i = 2, j = 1: a second wild value beside the first does not hide it. For 11 to 13 values.</summary>
    R21,

    /// <summary>i = 2, j = 2: leaves the other two out. From 14 values.</summary>
    R22,
}

/// <summary>
/// Dixon's test for one outlier. Critical values come from the exact distribution of the ratio (see
/// <see cref="DixonDistribution"/>): printed tables are off by up to 0.005 for Q and 0.03 for the other ratios.
/// </summary>
public static class Dixon
{
    /// <summary>The ratio that Dixon recommends for a number of values.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is below 3.</exception>
    public static DixonRatio RatioFor(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 3);
        return count switch
        {
            <= 7 => DixonRatio.R10,
            <= 10 => DixonRatio.R11,
            <= 13 => DixonRatio.R21,
            _ => DixonRatio.R22,
        };
    }

    /// <summary>The ratio that is passed by chance with the given significance.</summary>
    /// <param name="count">How many values; at least 3, 4, 5 and 6 for the four ratios.</param>
    /// <param name="significance">The chance, for instance 0.05.</param>
    /// <param name="ratio">Which ratio.</param>
    /// <param name="side">One end named beforehand, or either, which halves the significance for each.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static double CriticalValue(int count, double significance, DixonRatio ratio, OutlierSide side)
    {
        Require.Probability(significance);
        return new DixonDistribution(count, ratio).Point(significance / Ends(side));
    }

    /// <summary>Tests the most extreme value by the ratio recommended for so many values.</summary>
    /// <exception cref="ArgumentException">No values, or one not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="significance"/> is not between 0 and 1.</exception>
    public static OutlierResult Test(
        ReadOnlySpan<double> values, double significance = 0.05, OutlierSide side = OutlierSide.Either)
    {
        Require.Finite(values, 1);
        return values.Length < 3
            ? new OutlierResult.NotTested("two values have no gap to compare: at least three are needed")
            : Test(values, RatioFor(values.Length), significance, side);
    }

    /// <summary>Tests the most extreme value by a chosen ratio.</summary>
    /// <inheritdoc cref="Test(ReadOnlySpan{double}, double, OutlierSide)"/>
    public static OutlierResult Test(
        ReadOnlySpan<double> values, DixonRatio ratio, double significance, OutlierSide side = OutlierSide.Either)
    {
        Require.Finite(values, 1);
        Require.Probability(significance);
        var distribution = new DixonDistribution(values.Length, ratio);
        double[] sorted = Summary.Sorted(values);
        double high = side == OutlierSide.Low ? 0 : distribution.RatioOfLargest(sorted);
        double low = side == OutlierSide.High ? 0 : distribution.RatioOfSmallest(sorted);
        if (double.IsNaN(high) || double.IsNaN(low))
        {
            return new OutlierResult.NotTested("the values between which the range is taken are equal");
        }

        double extreme = high >= low && side != OutlierSide.Low ? sorted[^1] : sorted[0];
        double statistic = Math.Max(high, low);
        return OutlierResult.Judge(new OutlierEvidence(
            values.IndexOf(extreme),
            statistic,
            distribution.Point(significance / Ends(side)),
            Math.Min(1, Ends(side) * distribution.UpperTail(statistic))));
    }

    private static int Ends(OutlierSide side) => side == OutlierSide.Either ? 2 : 1;
}
