using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Bench.Benchmarks;

/// <summary>Causes and sizes of invented groups of the magnesium practical at 0.01 g, on one thread, the model made ready.</summary>
public class PosteriorBenchmark
{
    private static readonly Practical Practical = BuiltInPracticals.Find("magnesium-oxide")!;
    private readonly CauseModel model = new(new Circumstances(Practical), AtomicWeights.Iupac2024);
    private readonly BalanceReport balance = new(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>());
    private GroupReadings[] groups = [];
    private CausePosterior[] posteriors = [];

    [GlobalSetup]
    public void Draw()
    {
        var plan = new SimulationPlan(15, rounds: 2);
        groups = [.. SimulatedClass.Draw(new Circumstances(Practical), AtomicWeights.Iupac2024, plan, seed: 15).Groups.Select(g => g.HandedIn())];
        posteriors = [.. groups.Select(g => model.Of(g, balance))];
    }

    [Benchmark]
    public double ClassOfFifteen() => groups.Sum(g => model.Of(g, balance).AsExpected);

    [Benchmark]
    public int DecisionsOfFifteen() => posteriors.Sum(p => Diagnosis.Of(p, null, AtomicWeights.Iupac2024).Causes.Count);
}
