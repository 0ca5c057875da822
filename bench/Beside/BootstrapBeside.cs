using Calx.Bench.Benchmarks;
using Calx.Measurement.Statistics;

namespace Calx.Bench.Beside;

/// <summary>A bootstrap of a mean, its BCa interval included, on one thread beside scipy's vectorised one.</summary>
internal static class BootstrapBeside
{
    public static bool Run(SideBySide side)
    {
        double[] values = BootstrapBenchmark.Chem;
        double exact = Math.Sqrt(Summary.SumOfSquaredDeviations(values)) / values.Length;
        ulong seed = 0;
        return side.Compare("BCa interval of a mean, 24 values, 2000 resamples", "bootstraps", new Peer("reml.py", "100", "boot-scipy"), 1, () =>
            Bootstrap.OfValues(values, BootstrapBenchmark.Average, new BootstrapSettings(++seed))
                is BootstrapResult.Found found && Math.Abs((found.StandardError / exact) - 1) < 0.1);
    }
}
