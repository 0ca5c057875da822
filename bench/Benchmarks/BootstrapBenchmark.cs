using BenchmarkDotNet.Attributes;
using Calx.Measurement.Statistics;

namespace Calx.Bench.Benchmarks;

/// <summary>The interval of the mean of 24 results from 2000 resamples, on one thread and on two.</summary>
public class BootstrapBenchmark
{
    internal static readonly double[] Chem =
    [
        2.9, 3.1, 3.4, 3.4, 3.7, 3.7, 2.8, 2.5, 2.4, 2.4, 2.7, 2.2, 5.28, 3.37, 3.03, 3.03, 28.95, 3.77, 3.4, 2.2, 3.5, 3.6,
        3.7, 3.7,
    ];

    [Params(1, 2)]
    public int Threads { get; set; }

    [Benchmark]
    public BootstrapResult Mean() =>
        Bootstrap.OfValues(Chem, Average, new BootstrapSettings(1, 2000, 0.95, Threads));

    internal static double Average(double[] values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }
}
