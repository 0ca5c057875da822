using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// A number computed from some rows of a table, each named by its place; a row may be named more than once. Called from
/// several threads at once where more than one is asked for.
/// </summary>
/// <param name="rows">The places of the rows, from 0.</param>
public delegate double RowStatistic(ReadOnlySpan<int> rows);

/// <summary>
/// How far an estimate would move if other groups had been in the class: rows are drawn again with replacement, and the
/// interval is bias-corrected and accelerated (Efron, J. Am. Stat. Assoc. 82 (1987) 171). It needs some ten rows or more
/// to be worth its name, and like every interval it knows nothing of a bias that all rows share.
/// </summary>
public static class Bootstrap
{
    /// <summary>Resamples worked on as one piece, each with its own stream of random numbers.</summary>
    private const int BlockSize = 256;

    /// <summary>Resamples values and computes a statistic of each resample.</summary>
    /// <param name="values">The values, two or more.</param>
    /// <param name="statistic">The statistic, finite for any resample.</param>
    /// <param name="settings">Seed, number of resamples and the rest.</param>
    /// <exception cref="ArgumentException">Fewer than two values, or one not finite.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BootstrapResult OfValues(
        ReadOnlySpan<double> values, Func<double[], double> statistic, BootstrapSettings settings)
    {
        Require.Finite(values, 2);
        ArgumentNullException.ThrowIfNull(statistic);
        double[] kept = values.ToArray();
        return OfRows(
            kept.Length,
            rows =>
            {
                double[] sample = new double[rows.Length];
                for (int i = 0; i < sample.Length; i++)
                {
                    sample[i] = kept[rows[i]];
                }

                return statistic(sample);
            },
            settings);
    }

    /// <summary>Resamples rows of any table, such as points of a line, and computes a statistic of each resample.</summary>
    /// <param name="count">How many rows, two or more.</param>
    /// <param name="statistic">The statistic; one that is not finite for some resample leaves no interval.</param>
    /// <param name="settings">Seed, number of resamples and the rest.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is below 2.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BootstrapResult OfRows(int count, RowStatistic statistic, BootstrapSettings settings)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 2);
        ArgumentNullException.ThrowIfNull(statistic);
        ArgumentNullException.ThrowIfNull(settings);
        int[] all = [.. Enumerable.Range(0, count)];
        double estimate = statistic(all);
        double[] leaveOneOut = [.. all.Select(left => statistic([.. all.Where(row => row != left)]))];
        return FromReplicates(estimate, Replicates(count, statistic, settings), leaveOneOut, settings.Coverage);
    }

    /// <summary>The interval from replicates that were computed elsewhere.</summary>
    /// <param name="estimate">The statistic of the data.</param>
    /// <param name="replicates">The statistic of each resample, in any order.</param>
    /// <param name="leaveOneOut">The statistic with each row left out in turn; they measure how it leans.</param>
    /// <param name="coverage">The coverage probability, between 0 and 1.</param>
    /// <exception cref="ArgumentException">There are fewer than two replicates or left-out values.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverage"/> is not between 0 and 1.</exception>
    public static BootstrapResult FromReplicates(
        double estimate, IReadOnlyList<double> replicates, IReadOnlyList<double> leaveOneOut, double coverage)
    {
        ArgumentNullException.ThrowIfNull(replicates);
        ArgumentNullException.ThrowIfNull(leaveOneOut);
        Require.Probability(coverage);
        double[] sorted = [.. replicates.Order()];
        if (!double.IsFinite(estimate) || !sorted.All(double.IsFinite) || !leaveOneOut.All(double.IsFinite))
        {
            return new BootstrapResult.NotFound("the statistic cannot be computed for every resample");
        }

        Require.Finite(sorted, 2, nameof(replicates));
        Require.Finite([.. leaveOneOut], 2, nameof(leaveOneOut));
        return new AcceleratedInterval(estimate, sorted, leaveOneOut).For(coverage);
    }

    private static double[] Replicates(int count, RowStatistic statistic, BootstrapSettings settings)
    {
        double[] replicates = new double[settings.Resamples];
        int blocks = (settings.Resamples + BlockSize - 1) / BlockSize;
        var options = new ParallelOptions
        {
            MaxDegreeOfParallelism = settings.Threads,
            CancellationToken = settings.Cancellation,
        };
        Parallel.For(0, blocks, options, block =>
        {
            var random = new RandomStream(settings.Seed, (ulong)block);
            int first = block * BlockSize;
            int length = Math.Min(BlockSize, settings.Resamples - first);
            Fill(replicates.AsSpan(first, length), count, statistic, random);
        });
        return replicates;
    }

    private static void Fill(Span<double> replicates, int count, RowStatistic statistic, RandomStream random)
    {
        int[] rows = new int[count];
        for (int i = 0; i < replicates.Length; i++)
        {
            for (int row = 0; row < count; row++)
            {
                rows[row] = random.NextInt(count);
            }

            replicates[i] = statistic(rows);
        }
    }
}
