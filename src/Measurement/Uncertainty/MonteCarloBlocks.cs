namespace Calx.Measurement.Uncertainty;

/// <summary>The blocks that fill one or more sequences of draws, shared out among threads.</summary>
internal sealed class MonteCarloBlocks
{
    // Each failed draw costs an exception; a thousand say as much as a million.
    private const int MostFailuresCounted = 1000;

    private readonly MonteCarloSampler sampler;
    private readonly double[][] sequences;
    private readonly int blocksASequence;
    private readonly ulong firstBlock;
    private readonly MonteCarloMoments[] moments;
    private readonly bool[] failed;

    /// <summary>Blocks for sequences of equal length.</summary>
    /// <param name="sampler">Makes the draws.</param>
    /// <param name="sequences">Receive the values.</param>
    /// <param name="firstSequence">The number of the first sequence, from which the numbers of its blocks follow.</param>
    public MonteCarloBlocks(MonteCarloSampler sampler, double[][] sequences, int firstSequence = 0)
    {
        this.sampler = sampler;
        this.sequences = sequences;
        blocksASequence = (sequences[0].Length + MonteCarloSampler.BlockSize - 1) / MonteCarloSampler.BlockSize;
        firstBlock = (ulong)firstSequence * (ulong)blocksASequence;
        moments = new MonteCarloMoments[blocksASequence * sequences.Length];
        failed = new bool[moments.Length];
    }

    /// <summary>Draws and evaluates all; false where the model has no value for some draw.</summary>
    public bool Evaluate(ParallelOptions parallelism)
    {
        Parallel.For(0, moments.Length, parallelism, sampler.NewColumns, EvaluateBlock, static _ => { });
        return !failed.Contains(true);
    }

    /// <summary>Of all draws of a sequence.</summary>
    public MonteCarloMoments Moments(int sequence = 0)
    {
        MonteCarloMoments all = default;
        foreach (MonteCarloMoments block in moments.AsSpan(sequence * blocksASequence, blocksASequence))
        {
            all = all.With(block);
        }

        return all;
    }

    /// <summary>Counts the draws without a value from the first block on.</summary>
    /// <param name="drawsBefore">How many draws went before these blocks.</param>
    public MonteCarloOutcome.DrawsFailed CountFailures(int drawsBefore = 0)
    {
        int count = 0;
        int examined = drawsBefore;
        string? reason = null;
        for (int block = 0; block < failed.Length; block++)
        {
            int length = Part(block).Length;
            if (failed[block])
            {
                (IReadOnlyList<int> places, string? why) = sampler.Failures(firstBlock + (ulong)block, length);
                reason ??= why;
                if (count + places.Count >= MostFailuresCounted)
                {
                    examined += places[MostFailuresCounted - count - 1] + 1;
                    return new MonteCarloOutcome.DrawsFailed(MostFailuresCounted, examined, reason!);
                }

                count += places.Count;
            }

            examined += length;
        }

        return new MonteCarloOutcome.DrawsFailed(count, examined, reason ?? "the result is too large for a number");
    }

    private double[][] EvaluateBlock(int block, ParallelLoopState state, double[][] columns)
    {
        Span<double> values = Part(block);
        try
        {
            sampler.Evaluate(firstBlock + (ulong)block, columns, values);
            moments[block] = MonteCarloMoments.Of(values);
        }
        catch (UndefinedResultException)
        {
            failed[block] = true;
        }

        return columns;
    }

    private Span<double> Part(int block)
    {
        double[] values = sequences[block / blocksASequence];
        int start = block % blocksASequence * MonteCarloSampler.BlockSize;
        return values.AsSpan(start, Math.Min(MonteCarloSampler.BlockSize, values.Length - start));
    }
}
