namespace Calx.Measurement.Statistics;

/// <summary>
/// What describes one list of numbers: centre, spread and how each follows the one before. All results are in the
/// unit of the values. Every method throws <see cref="ArgumentException"/> for too few values or one not finite.
/// </summary>
public static class Summary
{
    /// <summary>
    /// What turns a median absolute deviation into a standard deviation for normal data, 1/Φ⁻¹(3/4), in the four
    /// decimals that the literature and other programs use.
    /// </summary>
    public const double NormalConsistency = 1.4826;

    /// <summary>The arithmetic mean of one value or more, correctly rounded but for rare last-place ties.</summary>
    public static double Mean(ReadOnlySpan<double> values)
    {
        Require.Finite(values, 1);
        return Moments.Of(values).Mean;
    }

    /// <summary>
    /// The experimental standard deviation with divisor n - 1 (JCGM 100:2008, 4.2.2), for two values or more. Computed
    /// in two passes about the mean held to double its length, so that what the doubles hold is what is described.
    /// </summary>
    public static double StandardDeviation(ReadOnlySpan<double> values)
    {
        Require.Finite(values, 2);
        return Math.Sqrt(Moments.Of(values).SumOfSquares / (values.Length - 1));
    }

    /// <summary>The sum of squared deviations from the mean, for one value or more; its unit is that of the values squared.</summary>
    public static double SumOfSquaredDeviations(ReadOnlySpan<double> values)
    {
        Require.Finite(values, 1);
        return Moments.Of(values).SumOfSquares;
    }

    /// <summary>The middle value, or the mean of the middle two, of one value or more.</summary>
    public static double Median(ReadOnlySpan<double> values)
    {
        Require.Finite(values, 1);
        return MedianOfSorted(Sorted(values));
    }

    /// <summary>
    /// The value below which a share <paramref name="p"/> lies: linear between order statistics at 1 + (n - 1)p
    /// (definition 7 of Hyndman and Fan, Am. Stat. 50 (1996) 361).
    /// </summary>
    /// <param name="values">One value or more, in any order.</param>
    /// <param name="p">The share, 0 to 1 with both ends allowed.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="p"/> is outside 0 to 1.</exception>
    public static double Quantile(ReadOnlySpan<double> values, double p)
    {
        Require.Finite(values, 1);
        return QuantileOfSorted(Sorted(values), p);
    }

    /// <summary>As <see cref="Quantile"/>, for values already in ascending order, which are not checked again.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="p"/> is outside 0 to 1.</exception>
    public static double QuantileOfSorted(ReadOnlySpan<double> ascending, double p)
    {
        if (!(p >= 0 && p <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(p), p, "A share from 0 to 1 is needed.");
        }

        double place = (ascending.Length - 1) * p;
        int below = Math.Min((int)place, ascending.Length - 1);
        int above = Math.Min(below + 1, ascending.Length - 1);
        return ascending[below] + ((place - below) * (ascending[above] - ascending[below]));
    }

    /// <summary>
    /// The median absolute deviation from the median times <see cref="NormalConsistency"/>, comparable with a standard
    /// deviation. It is 0 where more than half the values are equal, which balance readings often are.
    /// </summary>
    public static double MedianAbsoluteDeviation(ReadOnlySpan<double> values) =>
        NormalConsistency * UnscaledMedianAbsoluteDeviation(values);

    /// <summary>The median of the distances from the median, of one value or more.</summary>
    public static double UnscaledMedianAbsoluteDeviation(ReadOnlySpan<double> values)
    {
        double centre = Median(values);
        double[] distances = new double[values.Length];
        for (int i = 0; i < distances.Length; i++)
        {
            distances[i] = Math.Abs(values[i] - centre);
        }

        Array.Sort(distances);
        return MedianOfSorted(distances);
    }

    /// <summary>
    /// How much each value follows the one before it in the order given: the sum of products of neighbouring deviations
    /// over the sum of their squares (the definition of the NIST statistical reference datasets). Between -1 and 1.
    /// </summary>
    /// <exception cref="ArgumentException">There are fewer than two values, or all are equal.</exception>
    public static double Lag1Autocorrelation(ReadOnlySpan<double> values)
    {
        Require.Finite(values, 2);
        Moments moments = Moments.Of(values);
        if (moments.SumOfSquares == 0)
        {
            throw new ArgumentException("All values are equal: none can be said to follow another.", nameof(values));
        }

        DoubleDouble products = 0;
        for (int i = 1; i < values.Length; i++)
        {
            products += DoubleDouble.Product(moments.DeviationOf(values[i - 1]), moments.DeviationOf(values[i]));
        }

        return products.High / moments.SumOfSquares;
    }

    internal static double MedianOfSorted(ReadOnlySpan<double> ascending)
    {
        int middle = ascending.Length / 2;
        return ascending.Length % 2 == 1
            ? ascending[middle]
            : ascending[middle - 1] + ((ascending[middle] - ascending[middle - 1]) / 2);
    }

    internal static double[] Sorted(ReadOnlySpan<double> values)
    {
        double[] sorted = values.ToArray();
        Array.Sort(sorted);
        return sorted;
    }
}
