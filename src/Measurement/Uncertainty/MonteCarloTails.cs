namespace Calx.Measurement.Uncertainty;

/// <summary>The lowest and the highest of many values, in rising order, without sorting those between.</summary>
internal static class MonteCarloTails
{
    private const int SampleSize = 4096;

    // Fewer values than this, or tails that are most of them, are sorted whole.
    private const int WorthSplitting = 20_000;

    // The cut is set so many standard deviations of a sample's count too wide; should it fail, all is sorted.
    private const double Margin = 5;

    /// <summary>The <paramref name="count"/> lowest and highest values.</summary>
    public static (ReadOnlyMemory<double> Low, ReadOnlyMemory<double> High) Of(
        double[] values, int count, ParallelOptions parallelism)
    {
        int inSample = SampleCount(values.Length, count);
        if (values.Length >= WorthSplitting && inSample < SampleSize / 2)
        {
            double[] sample = Sample(values);
            double[]? low = null;
            double[]? high = null;
            Parallel.Invoke(
                parallelism,
                () => low = Collect(values, double.NegativeInfinity, sample[inSample]),
                () => high = Collect(values, sample[SampleSize - 1 - inSample], double.PositiveInfinity));
            if (low!.Length >= count && high!.Length >= count)
            {
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

    private static double[] Collect(double[] values, double from, double to)
    {
        int count = 0;
        foreach (double value in values)
        {
            count += value >= from & value <= to ? 1 : 0;
        }

        // One place too many: the loop below writes each value and moves on only from those that belong.
        double[] found = GC.AllocateUninitializedArray<double>(count + 1);
        int next = 0;
        foreach (double value in values)
        {
            found[next] = value;
            next += value >= from & value <= to ? 1 : 0;
        }

        double[] tail = found[..count];
        MonteCarloSort.Sort(tail);
        return tail;
    }
}
