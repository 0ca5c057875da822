using BenchmarkDotNet.Attributes;
using Calx.Measurement.Statistics;

namespace Calx.Bench.Benchmarks;

/// <summary>Lines through ten points: Pearson's data with York's weights.</summary>
public class YorkBenchmark
{
    internal static readonly UncertainPoint[] Points = [.. Pearson()];

    [Benchmark]
    public YorkResult ErrorsInBoth() => StraightLine.WithErrorsInBoth(Points);

    [Benchmark]
    public YorkResult ThroughOrigin() => StraightLine.ThroughOriginWithErrorsInBoth(Points);

    private static IEnumerable<UncertainPoint> Pearson()
    {
        double[] x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
        double[] y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
        double[] weightX = [1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1];
        double[] weightY = [1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500];
        return x.Select((at, i) => new UncertainPoint(at, Math.Pow(weightX[i], -0.5), y[i], Math.Pow(weightY[i], -0.5)));
    }
}
