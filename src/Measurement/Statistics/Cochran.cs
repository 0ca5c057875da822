using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Cochran's test for one group that scatters more than the others: C is the largest variance over the sum of all
/// (Cochran, Ann. Eugenics 11 (1941) 47; ISO 5725-2:1994, 7.3.3). Critical values follow from Fisher's F.
/// </summary>
public static class Cochran
{
    /// <summary>C that is passed by chance with the given significance: F/(F + p - 1), F at α/p on n-1 and (p-1)(n-1).</summary>
    /// <param name="groups">p, 2 or more.</param>
    /// <param name="size">n, results in each group, 2 or more.</param>
    /// <param name="significance">The chance, for instance 0.05.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static double CriticalValue(int groups, int size, double significance)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(groups, 2);
        ArgumentOutOfRangeException.ThrowIfLessThan(size, 2);
        Require.Probability(significance);
        double others = groups - 1.0;
        double f = FisherF.UpperQuantile(significance / groups, size - 1, others * (size - 1));
        return f / (f + others);
    }

    /// <summary>Tests the group with the largest variance; all groups must have the same number of results.</summary>
    /// <exception cref="ArgumentException">No groups, an empty group, or a number that is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="significance"/> is not between 0 and 1.</exception>
    public static OutlierResult Test(IReadOnlyList<IReadOnlyList<double>> groups, double significance = 0.05)
    {
        ArgumentNullException.ThrowIfNull(groups);
        Require.Probability(significance);
        double[] squares = new double[groups.Count];
        for (int i = 0; i < squares.Length; i++)
        {
            squares[i] = Summary.SumOfSquaredDeviations([.. groups[i]]);
        }

        if (Obstacle(groups, squares) is { } reason)
        {
            return new OutlierResult.NotTested(reason);
        }

        int place = Array.IndexOf(squares, squares.Max());
        double statistic = squares[place] / squares.Sum();
        return OutlierResult.Judge(new OutlierEvidence(
            place,
            statistic,
            CriticalValue(groups.Count, groups[0].Count, significance),
            Probability(statistic, groups.Count, groups[0].Count)));
    }

    private static string? Obstacle(IReadOnlyList<IReadOnlyList<double>> groups, double[] squares) =>
        groups.Count < 2 ? "one group has no other to be compared with"
        : groups.Any(group => group.Count != groups[0].Count) ? "the groups have different numbers of results"
        : groups[0].Count < 2 ? "a single result a group shows no spread"
        : squares.All(square => square == 0) ? "all results of each group are equal"
        : null;

    private static double Probability(double statistic, int groups, int size)
    {
        double others = groups - 1.0;
        double f = statistic >= 1 ? double.PositiveInfinity : statistic * others / (1 - statistic);
        return Math.Min(1, groups * FisherF.UpperTail(f, size - 1, others * (size - 1)));
    }
}
