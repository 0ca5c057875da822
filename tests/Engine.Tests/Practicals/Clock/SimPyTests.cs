using System.Globalization;
using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>The same classes at work as SimPy 2.3.1 simulated them, tests/reference/scripts/lesson_simpy.py: every statistic within
/// 4.5 of both standard errors together.</summary>
public sealed class SimPyTests
{
    private const string SetUp = "  - { id: set-up, label: set up, minutes: [4, 6, 12], kit: {}, per: trial, standing: judgement }\n";
    private const string Weigh = "  - { id: weigh-before, label: weigh, minutes: [1, 2, 4], kit: { balance: 1 }, reading: before, standing: judgement }\n";
    private const string Look = "  - { id: look, label: look, minutes: [0.2, 0.5, 1], kit: { teacher: 1 }, round: first, standing: judgement }\n";

    private const string Heat = """
          - { id: heat, label: heat, minutes: [8, 10, 15], kit: { burner: 1 }, round: first, standing: judgement }
          - { id: reheat, label: reheat, minutes: [3, 5, 7], kit: { burner: 1 }, round: again, standing: judgement }
          - { id: cool, label: cool, minutes: [5, 7, 10], kit: {}, round: each, standing: judgement }
          - { id: weigh-after, label: weigh, minutes: [1, 2, 4], kit: { balance: 1 }, reading: after, round: each, standing: judgement }
        """;

    private const string Late = "{ gasOff: 0, late: 0.1, lateBy: [1, 4, 10], newStart: [1, 2, 4], standing: judgement }";
    private const string Punctual = "{ gasOff: 0, late: 0, lateBy: [1, 4, 10], newStart: [1, 2, 4], standing: judgement }";

    private static int Lessons => LongProofs.Cases(2000, 40_000);

    [Theory]
    [InlineData(12, 2)]
    [InlineData(15, 1)]
    [InlineData(15, 2)]
    [InlineData(18, 3)]
    [InlineData(8, 1)]
    public void The_plain_class_ends_as_SimPy_s_does(int groups, int balances) =>
        Agrees("plain", new PlanSettings(Given.WithSteps(SetUp + Weigh + Heat), groups, Given.Balances(balances), 60));

    [Fact]
    public void A_class_that_shares_the_teacher_and_eight_burners_ends_as_SimPy_s_does() =>
        Agrees("shared", new PlanSettings(Given.WithSteps(SetUp + Weigh + Look + Heat), 12, Given.Balances(2), 60).WithKit("burner", 8));

    [Fact]
    public void A_class_with_latecomers_ends_as_SimPy_s_does() =>
        Agrees("late", new PlanSettings(Given.WithSteps(SetUp + Weigh + Heat, Late), 12, Given.Balances(2), 60));

    [Fact]
    public void Statistics_of_SimPy_tell_the_scenarios_apart()
    {
        // Were another class simulated than the one named, the test would fail: latecomers alone move the mean by seven errors.
        Assert.True(Reference("late", 12, 2)["mean_end"].Value - Reference("plain", 12, 2)["mean_end"].Value > 4 * Reference("plain", 12, 2)["mean_end"].Error);
        Assert.NotEqual(Punctual, Late);
    }

    private static void Agrees(string scenario, PlanSettings settings)
    {
        var tables = new PlanTables(Given.Weights);
        var run = new LessonRun(settings, new LessonRoute(settings, tables.Durations), LessonRules.Unbroken, reheats: null);
        double[] ends = new double[Lessons];
        double waited = 0;
        double visits = 0;
        double use = 0;
        for (int lesson = 0; lesson < ends.Length; lesson++)
        {
            ends[lesson] = run.Run(21, lesson).End;
            SharedUse balance = run.Shared[0];
            waited += balance.WaitedMinutes;
            visits += balance.Visits;
            use += balance.BusyMinutes / (balance.Units * ends[lesson]);
        }

        Dictionary<string, (double Value, double Error)> reference = Reference(scenario, settings.Groups, settings.Balances.Count);
        double n = ends.Length;
        double mean = ends.Average();
        double spread = Math.Sqrt(ends.Sum(e => (e - mean) * (e - mean)) / (n - 1));
        double simpyLessons = 20_000;
        Close("mean_end", mean, spread / Math.Sqrt(n));
        Close("sd_end", spread, spread / Math.Sqrt(2 * n));
        Close("mean_balance_wait", waited / visits, reference["mean_balance_wait"].Error * Math.Sqrt(simpyLessons / n));
        Close("balance_use", use / n, reference["balance_use"].Error * Math.Sqrt(simpyLessons / n));
        double[] sorted = [.. ends.Order()];
        foreach (int percent in (int[])[10, 50, 90])
        {
            Close($"q{percent}_end", sorted[(int)(n * percent / 100)], reference[$"q{percent}_end"].Error * Math.Sqrt(simpyLessons / n));
        }

        foreach (int minute in (int[])[50, 55, 60])
        {
            Share share = Share.Of(ends.Count(e => e <= minute), ends.Length);
            Close($"p_by_{minute}", share.Value, share.StandardError);
        }

        void Close(string statistic, double ours, double error)
        {
            (double value, double its) = reference[statistic];
            Assert.True(
                Math.Abs(ours - value) < 4.5 * Math.Sqrt((error * error) + (its * its)),
                string.Create(CultureInfo.InvariantCulture, $"{statistic}: {ours} ± {error}, SimPy {value} ± {its}"));
        }
    }

    private static Dictionary<string, (double Value, double Error)> Reference(string scenario, int groups, int balances) =>
        ReferenceTable.Read(Path.Combine("computed", "lesson_simpy.csv")).Rows
            .Where(r => r.Text("scenario") == scenario && r.Number("groups") == groups && r.Number("balances") == balances)
            .ToDictionary(r => r.Text("statistic"), r => (r.Number("value"), r.Number("standard_error")));
}
