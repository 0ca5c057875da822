namespace Calx.Measurement.Uncertainty;

/// <summary>The lowest and the highest of many values, in rising order, without sorting those between.</summary>
internal static class MonteCarloTails
{
    private const int SampleSize = 4096;

    // Fewer values than this, or tails that are most of them, are sorted whole.
    private const int WorthSplitting = 20_000;

    // The cut is set so many standard deviations of a sample's count too wide; should it fail, all is sorted.
    private const double Margin = 5;

    // Values looked through at a time: with the room for both tails they stay in the processor's second cache.
    private const int PartSize = 8_192;

    /// <summary>The <paramref name="count"/> lowest and highest values.</summary>
    public static (ReadOnlyMemory<double> Low, ReadOnlyMemory<double> High) Of(
        double[] values, int count, ParallelOptions parallelism)
    {
        int inSample = SampleCount(values.Length, count);
        if (values.Length >= WorthSplitting && inSample < SampleSize / 2)
        {
            double[] sample = Sample(values);
            var cut = new Cut(sample[inSample], sample[SampleSize - 1 - inSample]);
            (double[] low, double[] high) = Collect(values, cut, parallelism);
            if (low.Length >= count && high.Length >= count)
            {
                Parallel.Invoke(parallelism, () => MonteCarloSort.Sort(low), () => MonteCarloSort.Sort(high));
                return (low.AsMemory(0, count), high.AsMemory(high.Length - count));
            }
        }

        double[] all = [.. values];
        MonteCarloSort.Sort(all);
        return (all.AsMemory(0, count), all.AsMemory(all.Length - count));
    }

    private static int SampleCount(int length, int count)
    {
        double share = (double)count / length;
        return (int)((share * SampleSize) + (Margin * Math.Sqrt(SampleSize * share * (1 - share)))) + 1;
    }

    // Draws are independent, so that evenly spaced ones are a random sample.
    private static double[] Sample(double[] values)
    {
        double[] sample = new double[SampleSize];
        for (int i = 0; i < SampleSize; i++)
        {
            sample[i] = values[(int)((long)i * values.Length / SampleSize)];
        }

        Array.Sort(sample);
        return sample;
    }

    // Parts are looked through side by side; once sorted, the values tell nothing of the order of the parts.
    private static (double[] Low, double[] High) Collect(double[] values, Cut cut, ParallelOptions parallelism)
    {
        var lows = new double[(values.Length + PartSize - 1) / PartSize][];
        var highs = new double[lows.Length][];
        Parallel.For(
            0,
            lows.Length,
            parallelism,
            static () => new Room(new double[PartSize], new double[PartSize]),
            (part, _, room) =>
            {
                int start = part * PartSize;
                ReadOnlySpan<double> here = values.AsSpan(start, Math.Min(PartSize, values.Length - start));
                (lows[part], highs[part]) = CollectPart(here, cut, room);
                return room;
            },
            static _ => { });
        return (Joined(lows), Joined(highs));
    }

    // Each value is written to both rooms, and a room moves on only past those that belong: no branch to mispredict.
    private static (double[] Low, double[] High) CollectPart(ReadOnlySpan<double> values, Cut cut, Room room)
    {
        Span<double> low = room.Low;
        Span<double> high = room.High;
        int lows = 0;
        int highs = 0;
        foreach (double value in values)
        {
            low[lows] = value;
            high[highs] = value;
            lows += value <= cut.Low ? 1 : 0;
            highs += value >= cut.High ? 1 : 0;
        }

        return (low[..lows].ToArray(), high[..highs].ToArray());
    }

    private static double[] Joined(double[][] parts)
    {
        double[] all = GC.AllocateUninitializedArray<double>(parts.Sum(part => part.Length));
        int next = 0;
        foreach (double[] part in parts)
        {
            part.CopyTo(all, next);
            next += part.Length;
        }

        return all;
    }

    private readonly record struct Cut(double Low, double High);

    private sealed record Room(double[] Low, double[] High);
}
