namespace Calx.Measurement.Statistics;

/// <summary>How a bootstrap is run. The same seed and number of resamples give the same result for any number of threads.</summary>
public sealed class BootstrapSettings
{
    /// <summary>Takes the settings.</summary>
    /// <param name="seed">Fixes the resamples.</param>
    /// <param name="resamples">How many, 100 or more; 2000 are usual for an interval.</param>
    /// <param name="coverage">The coverage probability of the interval, between 0 and 1.</param>
    /// <param name="threads">How many threads work on it, 1 or more.</param>
    /// <param name="cancellation">Stops it early with <see cref="OperationCanceledException"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public BootstrapSettings(
        ulong seed,
        int resamples = 2000,
        double coverage = 0.95,
        int threads = 1,
        CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(resamples, 100);
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        Require.Probability(coverage);
        Seed = seed;
        Resamples = resamples;
        Coverage = coverage;
        Threads = threads;
        Cancellation = cancellation;
    }

    /// <summary>Fixes the resamples.</summary>
    public ulong Seed { get; }

    /// <summary>How many resamples are drawn.</summary>
    public int Resamples { get; }

    /// <summary>The coverage probability of the interval.</summary>
    public double Coverage { get; }

    /// <summary>How many threads work on it.</summary>
    public int Threads { get; }

    /// <summary>Stops it early.</summary>
    public CancellationToken Cancellation { get; }
}
