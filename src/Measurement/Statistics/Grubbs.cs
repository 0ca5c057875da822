using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Grubbs' test for one outlier: G is the distance of the extreme value from the mean in standard deviations (Grubbs,
/// Technometrics 11 (1969) 1; ISO 5725-2:1994, 7.3.4). Critical values follow from Student's t.
/// </summary>
public static class Grubbs
{
    /// <summary>G that is passed by chance with the given significance: (n-1)/√n · √(t²/(n-2+t²)).</summary>
    /// <param name="count">n, 3 or more.</param>
    /// <param name="significance">The chance, for instance 0.05.</param>
    /// <param name="side">One end named beforehand, or either, which halves the significance for each.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static double CriticalValue(int count, double significance, OutlierSide side)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 3);
        Require.Probability(significance);
        double t = -StudentT.Quantile(significance / (count * Ends(side)), count - 2);
        return (count - 1) / Math.Sqrt(count) * Math.Sqrt(t * t / (count - 2 + (t * t)));
    }

    /// <summary>Tests the most extreme value.</summary>
    /// <exception cref="ArgumentException">No values, or one not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="significance"/> is not between 0 and 1.</exception>
    public static OutlierResult Test(
        ReadOnlySpan<double> values, double significance = 0.05, OutlierSide side = OutlierSide.Either)
    {
        Require.Finite(values, 1);
        Require.Probability(significance);
        if (values.Length < 3)
        {
            return new OutlierResult.NotTested("two values lie equally far from their mean: at least three are needed");
        }

        Moments moments = Moments.Of(values);
        double deviation = Math.Sqrt(moments.SumOfSquares / (values.Length - 1));
        if (deviation == 0)
        {
            return new OutlierResult.NotTested("all values are equal");
        }

        int place = Extreme(values, moments, side);
        double statistic = Math.Max(0, Outward(moments.DeviationOf(values[place]), side) / deviation);
        return OutlierResult.Judge(new OutlierEvidence(
            place,
            statistic,
            CriticalValue(values.Length, significance, side),
            Probability(statistic, values.Length, Ends(side))));
    }

    private static int Ends(OutlierSide side) => side == OutlierSide.Either ? 2 : 1;

    private static double Outward(double deviation, OutlierSide side) => side switch
    {
        OutlierSide.High => deviation,
        OutlierSide.Low => -deviation,
        _ => Math.Abs(deviation),
    };

    private static int Extreme(ReadOnlySpan<double> values, Moments moments, OutlierSide side)
    {
        int place = 0;
        for (int i = 1; i < values.Length; i++)
        {
            if (Outward(moments.DeviationOf(values[i]), side) > Outward(moments.DeviationOf(values[place]), side))
            {
                place = i;
            }
        }

        return place;
    }

    private static double Probability(double statistic, int count, int ends)
    {
        double least = ((count - 1.0) * (count - 1)) - (count * statistic * statistic);
        if (least <= 0)
        {
            return 0;
        }

        double t = Math.Sqrt(count * (count - 2.0) * statistic * statistic / least);
        return Math.Min(1, count * ends * StudentT.UpperTail(t, count - 2));
    }
}
