using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Bench.Benchmarks;

/// <summary>A whole plan of the magnesium practical for twelve groups on two balances, nothing kept from one to the next.</summary>
public class PlanBenchmark
{
    private static readonly Practical Practical = BuiltInPracticals.Find("magnesium-oxide")!;

    /// <summary>Length of the lesson in min: in 60 little is worth simulating, in 100 much.</summary>
    [Params(60, 100)]
    public double Minutes { get; set; } = 60;

    [Benchmark]
    public double AmountsReadingsAndLesson() => Of(looksForWays: false).Lesson.P50;

    [Benchmark]
    public int WithWays() => Of(looksForWays: true).Ways!.Count;

    private Plan Of(bool looksForWays) => Plan.Of(
        new PlanSettings(Practical, 12, [new Balance(0.01), new Balance(0.01)], Minutes), AtomicWeights.Iupac2024, new PlanOptions(looksForWays: looksForWays));
}
