using BenchmarkDotNet.Attributes;
using Calx.Bench.Beside;
using Calx.Measurement.Uncertainty;

namespace Calx.Bench.Benchmarks;

/// <summary>JCGM 101:2008, 9.3 (calibration of a mass), a million draws with both intervals.</summary>
public class MonteCarloBenchmark
{
    private readonly MeasurementModel model = MassCalibration.Model();

    [Params(1, 2)]
    public int Threads { get; set; }

    [Benchmark]
    public MonteCarloOutcome Fixed() => MonteCarlo.Run(model, new MonteCarloSettings(threads: Threads));

    [Benchmark]
    public MonteCarloOutcome Adaptive() =>
        MonteCarlo.RunAdaptive(model, 2, new MonteCarloSettings(10_000_000, threads: Threads));
}
