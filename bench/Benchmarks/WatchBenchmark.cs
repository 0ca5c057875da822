using BenchmarkDotNet.Attributes;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.Bench.Benchmarks;

/// <summary>What a running lesson of twelve groups is asked: the forecast, a group's advice, and whether a reading is asked about.</summary>
public class WatchBenchmark
{
    private static readonly Balance Centigram = new(0.01);

    private readonly LessonWatch watch = new(
        new PlanSettings(BuiltInPracticals.Find("magnesium-oxide")!, 12, [Centigram, Centigram], 100).WithPrepared(true),
        AtomicWeights.Iupac2024,
        seed: 5);

    private readonly GroupAtWork[] groups = [.. Enumerable.Range(1, 12).Select(g => g <= 6 ? Weighed(g, 15 + g, 19 + g) : Weighed(g, 15 + g, null))];

    private readonly GroupAtWork heated = new(1, 1, Centigram, new GroupReadings("G1", null, [Of("empty", 28.60m), Of("before", 28.84m), Of("after", 28.93m)]));

    private readonly LessonMoment moment = new(32, 100, 10, 60);

    [Benchmark]
    public double Forecast() => watch.Outlook(groups, moment).Fits.Value;

    [Benchmark]
    public int WhereGroupsStand() => watch.Now(groups, moment).Count(n => n.Next is not null);

    [Benchmark]
    public bool Advice() => watch.AdviceFor(heated, moment).ForTeacher.Length > 0;

    [Benchmark]
    public bool Query() => watch.QueryFor(heated, new Weighing("after", 2), new WrittenNumber(28.97m), 1) is ReadingQuery.LookAgain { IsImplausible: true };

    private static GroupAtWork Weighed(int number, double empty, double? before)
    {
        var at = new Dictionary<string, double> { ["empty"] = empty };
        var readings = new List<TakenReading> { Of("empty", 28.60m) };
        if (before is double minute)
        {
            at["before"] = minute;
            readings.Add(Of("before", 28.84m));
        }

        return new GroupAtWork(
            number, 1, Centigram, new GroupReadings(FormattableString.Invariant($"G{number}"), null, readings), new GroupMoments(at));
    }

    private static TakenReading Of(string id, decimal grams) => new(id, 1, new WrittenNumber(grams));
}
