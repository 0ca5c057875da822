using Calx.Measurement.Distributions;

namespace Calx.Bench.Benchmarks;

/// <summary>Drawn results of a class: about 1, spread 0.03 between groups and 0.03 within, as the peers draw theirs.</summary>
internal static class ClassData
{
    public static double[][] Groups(ulong seed, int count, int size)
    {
        var random = new RandomStream(seed, 0);
        var groups = new double[count][];
        for (int i = 0; i < count; i++)
        {
            double level = 1 + (0.03 * random.NextNormal());
            groups[i] = [.. Enumerable.Range(0, size).Select(_ => level + (0.03 * random.NextNormal()))];
        }

        return groups;
    }
}
