namespace Calx.Practicals.CatchUp;

/// <summary>How catch-up data are drawn.</summary>
public sealed class CatchUpOptions
{
    /// <summary>Share of the packs in which something went wrong, unless another is given. Judgement, no source: enough that a class has
    /// something to find out, and few enough that a student cannot count on it.</summary>
    public const double UsualOddShare = 0.4;

    /// <summary>Takes them.</summary>
    /// <param name="seed">Which of the possible classes. The same seed and student give the same data.</param>
    /// <param name="oddShare">Share of the packs in which a cause moved the result by more than counts, 0 to 1.</param>
    /// <param name="threads">Threads; 0 takes as many as there are processors. The data do not depend on it.</param>
    /// <param name="cancellation">Gives the work up.</param>
    /// <exception cref="ArgumentOutOfRangeException">The share is not from 0 to 1, or the number of threads is below 0.</exception>
    public CatchUpOptions(ulong seed, double oddShare = UsualOddShare, int threads = 0, CancellationToken cancellation = default)
    {
        OddShare = oddShare is >= 0 and <= 1
            ? oddShare : throw new ArgumentOutOfRangeException(nameof(oddShare), oddShare, "A share from 0 to 1 is expected.");
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        (Seed, Parallel) = (seed, new ParallelOptions { CancellationToken = cancellation, MaxDegreeOfParallelism = threads == 0 ? -1 : threads });
    }

    /// <summary>Which of the possible classes.</summary>
    public ulong Seed { get; }

    /// <summary>Share of the packs in which a cause moved the result by more than counts.</summary>
    public double OddShare { get; }

    internal ParallelOptions Parallel { get; }
}
