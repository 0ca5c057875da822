using Calx.Bench.Benchmarks;
using Calx.Measurement.Statistics;

namespace Calx.Bench.Beside;

/// <summary>Lines with errors in both variables beside scipy's orthogonal distance regression.</summary>
internal static class YorkBeside
{
    private const int Fits = 1000;

    public static bool Run(SideBySide side) =>
        side.Compare("line with errors in both", "fits", new Peer("york.py", "1000", "odr"), Fits, () =>
            Enumerable.Range(0, Fits).All(_ => StraightLine.WithErrorsInBoth(YorkBenchmark.Points)
                is YorkResult.Fitted { Fit.Line: var line } && Math.Abs(line.Slope + 0.480533407) < 1e-8));
}
