using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Bench.Benchmarks;

/// <summary>What twenty lessons of fifteen groups teach of every step, fault and piece of kit of magnesium; and what one of them says.</summary>
public class LearningBenchmark
{
    private const int Lessons = 20;
    private const int Groups = 15;

    private static readonly Practical Magnesium = BuiltInPracticals.Find("magnesium-oxide")!;

    private readonly PastLesson[] past = [.. Enumerable.Range(0, Lessons).Select(Past)];

    private readonly FaultCounts counts = new(Magnesium, [], AtomicWeights.Iupac2024);

    private readonly ClassReadings readings = new(
        Magnesium.Id,
        [
            .. SimulatedClass.Draw(new Circumstances(Magnesium, []), AtomicWeights.Iupac2024, new SimulationPlan(Groups, new Balance(0.01)), 5).Groups.Select(g => g.HandedIn()),
        ],
        new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>()));

    private readonly PlanSettings plan = new PlanSettings(Magnesium, Groups, [new Balance(0.01), new Balance(0.01)], 100).WithPrepared(true);

    private readonly HeardTrial[] heard = [.. Enumerable.Range(1, Groups).Select(Heard)];

    /// <summary>All numbers of the practical from twenty lessons.</summary>
    [Benchmark]
    public int TwentyLessons() => LearnedPriors.Of(Magnesium, past, [], new NextLesson("", "9F", Groups)).Changes.Count;

    /// <summary>In how many groups of one lesson each fault probably happened.</summary>
    [Benchmark]
    public int FaultsOfOne() => counts.Of(readings).Count;

    /// <summary>Times of steps of one lesson.</summary>
    [Benchmark]
    public int TimesOfOne() => HeardSteps.Of(plan, 5, heard).Count;

    /// <summary>Every step a little longer or shorter than the file has it, group by group and lesson by lesson; the bell cut one reheat
    /// short.</summary>
    private static PastLesson Past(int lesson) => new(
        "",
        FormattableString.Invariant($"9{(char)('A' + (lesson % 8))}"),
        [
            .. Magnesium.Steps.SelectMany(s => Enumerable.Range(0, s.Place.Per == StepPer.Class ? 1 : Groups)
                .Select(g => new StepSeen(s.Id, s.Minutes.Mean * (0.8 + (0.03 * g) + (0.01 * lesson)), isAtLeast: g == Groups - 1 && s.Place.Round == StepRound.Again))),
        ],
        [.. Magnesium.Faults.Select((f, i) => new FaultSeen(f.Cause, Groups, Math.Min(Groups, Groups * f.Rate * (0.5 + (0.1 * ((lesson + i) % 10))))))],
        [.. Magnesium.Kit.Where(k => k.Loss.Breaks > 0).Select(k => new KitSeen(k.Id, Groups, lesson % 3))]);

    private static HeardTrial Heard(int group) => new(
        group, isFirst: true, 100,
        [
            new HeardMark.Read(8 + (2 * group), "before", null), new HeardMark.FlameLit(10 + (2 * group)), new HeardMark.FlameOut(26 + (2 * group)),
            new HeardMark.Read(40 + (2 * group), "after", "A"), new HeardMark.FlameLit(43 + (2 * group)), new HeardMark.FlameOut(48 + (2 * group)),
        ]);
}
