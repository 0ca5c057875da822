namespace Calx.Measurement.Uncertainty;

/// <summary>
/// The adaptive procedure (JCGM 101:2008, 7.9.4). Sequences are made some at a time, for the threads' sake, and judged one
/// by one in their order: those made beyond the one that settles it are not used.
/// </summary>
internal sealed class MonteCarloAdaptive
{
    private const int LeastSequenceLength = 10_000;
    private const int SequencesAtATime = 16;

    private readonly MonteCarloSampler sampler;
    private readonly int significantDigits;
    private readonly MonteCarloSettings settings;
    private readonly int length;
    private readonly List<double[]> draws = [];
    private readonly List<MonteCarloSequence> sequences = [];
    private MonteCarloMoments moments;

    public MonteCarloAdaptive(MonteCarloSampler sampler, int significantDigits, MonteCarloSettings settings)
    {
        this.sampler = sampler;
        this.significantDigits = significantDigits;
        this.settings = settings;
        // 7.9.4 b, with a rounding error's room so that 0.95 gives 2000 and not 2001.
        double tails = Math.Ceiling((100 / (1 - settings.Coverage)) - 1e-6);
        length = (int)Math.Min(Math.Max(tails, LeastSequenceLength), settings.Draws);
    }

    private int MostSequences => settings.Draws / length;

    public MonteCarloOutcome Run()
    {
        while (draws.Count < MostSequences)
        {
            double[][] next = [.. Enumerable
                .Range(0, Math.Min(SequencesAtATime, MostSequences - draws.Count))
                .Select(_ => GC.AllocateUninitializedArray<double>(length))];
            var blocks = new MonteCarloBlocks(sampler, next, draws.Count);
            if (!blocks.Evaluate(settings.Parallelism))
            {
                return blocks.CountFailures(draws.Count * length);
            }

            if (Judge(next, blocks))
            {
                return new MonteCarloOutcome.Finished(Summary());
            }
        }

        double doubt = sequences.Count > 1 ? MonteCarloSequence.LargestDoubt(sequences) : double.PositiveInfinity;
        return new MonteCarloOutcome.NotStable(Summary(), Tolerance(), doubt);
    }

    private bool Judge(double[][] next, MonteCarloBlocks blocks)
    {
        var found = new MonteCarloSequence[next.Length];
        Parallel.For(0, next.Length, settings.Parallelism, i => found[i] = Sequence(next[i], blocks.Moments(i)));
        for (int i = 0; i < next.Length; i++)
        {
            draws.Add(next[i]);
            sequences.Add(found[i]);
            moments = moments.With(blocks.Moments(i));
            if (sequences.Count > 1 && MonteCarloSequence.LargestDoubt(sequences) <= Tolerance())
            {
                return true;
            }
        }

        return false;
    }

    private MonteCarloSequence Sequence(double[] values, MonteCarloMoments of)
    {
        int outside = MonteCarloIntervals.Outside(length, settings.Coverage);
        double[] sorted = [.. values];
        MonteCarloSort.Sort(sorted);
        CoverageInterval shortest = MonteCarloIntervals.Shortest(
            sorted.AsSpan(0, outside), sorted.AsSpan(length - outside), settings.Coverage);
        return new MonteCarloSequence(of.Mean, of.StandardDeviation, shortest.Low, shortest.High);
    }

    private double Tolerance() => NumericalTolerance.Of(moments.StandardDeviation, significantDigits);

    private MonteCarloResult Summary()
    {
        double[] all = GC.AllocateUninitializedArray<double>(draws.Count * length);
        for (int i = 0; i < draws.Count; i++)
        {
            draws[i].CopyTo(all, i * length);
        }

        return MonteCarloIntervals.Summarise(all, moments, settings);
    }
}
