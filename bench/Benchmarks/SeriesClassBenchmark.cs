using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Bench.Benchmarks;

/// <summary>A class of twelve groups with twenty-one points each, as a teacher's file has it: curves, orders, disturbances, causes.</summary>
public class SeriesClassBenchmark
{
    private readonly ClassReadings marble = Drawn("marble-and-acid");
    private readonly ClassReadings peroxide = Drawn("hydrogen-peroxide");

    /// <summary>Gas held back, so that a lag is averaged over as well.</summary>
    [Benchmark]
    public int CurvesOfTwelveGasHeldBack() => Analysed(marble, causes: false);

    /// <summary>From the first reading on, the noise found.</summary>
    [Benchmark]
    public int CurvesOfTwelve() => Analysed(peroxide, causes: false);

    /// <summary>The same with causes and next steps: first and last point are all that these use.</summary>
    [Benchmark]
    public int CurvesAndCausesOfTwelve() => Analysed(peroxide, causes: true);

    private static int Analysed(ClassReadings readings, bool causes) => ClassAnalysis.Of(
        BuiltInPracticals.Find(readings.PracticalId)!, readings, AtomicWeights.Iupac2024, new AnalysisOptions(causes, [])).Groups.Count(g => g.Curve!.Fit is not null);

    private static ClassReadings Drawn(string id) => new(
        id,
        [.. SimulatedClass.Draw(new Circumstances(BuiltInPracticals.Find(id)!), AtomicWeights.Iupac2024, new SimulationPlan(12), seed: 12).Groups.Select(g => g.HandedIn())],
        new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>()));
}
