using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Planning;

namespace Calx.Bench.Benchmarks;

/// <summary>Lessons of the plain class: with as many heatings for all, and with reheats decided by drawn readings.</summary>
public class LessonBenchmark
{
    /// <summary>Lessons of one operation.</summary>
    public const int Lessons = 20_000;

    private readonly PlanSettings plain = PlainClass.Settings();
    private readonly DurationTable durations = new();
    private readonly GroupDrawer[] drawers;

    public LessonBenchmark() => drawers = new PlanTables(AtomicWeights.Iupac2024).DrawersOf(plain);

    [Benchmark]
    public double PlainLessons() => Simulator(decided: false).Fits(Lessons).Value;

    [Benchmark]
    public double LessonsWithReheatsDecided() => Simulator(decided: true).Fits(Lessons).Value;

    private LessonSimulator Simulator(bool decided) => new(plain, durations, decided ? drawers : [], 1, new ParallelOptions());
}
