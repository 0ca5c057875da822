namespace Calx.Measurement.Uncertainty;

/// <summary>How a Monte Carlo calculation is to be made. The result depends on draws, seed and coverage, and on nothing
/// else: any number of threads gives the same bytes.</summary>
public sealed class MonteCarloSettings
{
    /// <summary>The fewest draws: below this an interval's ends are hardly known.</summary>
    public const int LeastDraws = 1_000;

    /// <summary>The most draws: they take 8 bytes each, 0.8 GB in all.</summary>
    public const int MostDraws = 100_000_000;

    /// <summary>The fewest draws that must lie outside the coverage interval.</summary>
    public const int LeastOutside = 10;

    /// <summary>States the settings.</summary>
    /// <param name="draws">How many draws, from <see cref="LeastDraws"/> to <see cref="MostDraws"/>; for the adaptive
    /// procedure the most it may take.</param>
    /// <param name="seed">Which of the possible sets of draws.</param>
    /// <param name="threads">How many threads; 0 for as many as there are processors.</param>
    /// <param name="coverage">Coverage probability, so far inside 0 to 1 that <see cref="LeastOutside"/> draws lie
    /// outside the interval and as many inside.</param>
    /// <param name="keepSortedDraws">Whether the result is to hold all draws in rising order.</param>
    /// <param name="cancellation">Stops the calculation within some thousand draws.</param>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of range.</exception>
    public MonteCarloSettings(
        int draws = 1_000_000,
        ulong seed = 1,
        int threads = 0,
        double coverage = 0.95,
        bool keepSortedDraws = false,
        CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, LeastDraws);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(draws, MostDraws);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        if (!(Math.Min(coverage, 1 - coverage) * draws >= LeastOutside))
        {
            throw new ArgumentOutOfRangeException(
                nameof(coverage), coverage, $"At least {LeastOutside} of the draws must lie outside, and inside, the interval.");
        }

        Draws = draws;
        Seed = seed;
        Threads = threads == 0 ? Environment.ProcessorCount : threads;
        Coverage = coverage;
        KeepSortedDraws = keepSortedDraws;
        Cancellation = cancellation;
    }

    /// <summary>How many draws; for the adaptive procedure the most.</summary>
    public int Draws { get; }

    /// <summary>Which of the possible sets of draws.</summary>
    public ulong Seed { get; }

    /// <summary>How many threads, at least 1.</summary>
    public int Threads { get; }

    /// <summary>Coverage probability of the intervals.</summary>
    public double Coverage { get; }

    /// <summary>Whether the result is to hold all draws in rising order.</summary>
    public bool KeepSortedDraws { get; }

    /// <summary>Stops the calculation.</summary>
    public CancellationToken Cancellation { get; }

    /// <summary>For the loops over blocks.</summary>
    internal ParallelOptions Parallelism => new() { MaxDegreeOfParallelism = Threads, CancellationToken = Cancellation };
}
