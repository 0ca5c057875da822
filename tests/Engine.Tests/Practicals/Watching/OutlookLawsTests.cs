using Calx.Chemistry.Elements;
using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>Laws that a forecast from the middle of a lesson keeps.</summary>
public sealed class OutlookLawsTests
{
    private static GroupAtWork[] Nobody => [.. Enumerable.Range(1, 12).Select(i => Group("", number: i))];

    /// <summary>A class half-way: some at the balance, some heating, one cooling.</summary>
    private static GroupAtWork[] HalfWay =>
    [
        Group("empty=28.60@15 before=28.84@18", flameOut: 37, number: 1),
        .. Enumerable.Range(2, 6).Select(i => Group($"empty=28.60@{14 + i} before=28.84@{18 + i}", lit: 22 + i, number: i)),
        .. Enumerable.Range(8, 5).Select(i => Group($"empty=28.60@{22 + i}", number: i)),
    ];

    [Fact]
    public void At_the_first_bell_it_is_the_plans_own_forecast()
    {
        LessonForecast plan = Given.Forecast(Plan, 2000, seed: 5);
        LessonOutlook outlook = Watch.Outlook(Nobody, At(0, workBegan: null), 2000);
        // The same lessons: not only near, but equal.
        Assert.Equal(plan.Fits, outlook.Fits);
        Assert.Equal((plan.OnTime, plan.GasOffInTime, plan.WeighedInTime), (outlook.OnTime, outlook.GasOffInTime, outlook.WeighedInTime));
        Assert.Equal((plan.P50, plan.P90), (outlook.End.Median, outlook.End.Ninth));
        Assert.Equal(plan.Calls, outlook.Calls);
    }

    [Fact]
    public void It_does_not_depend_on_the_number_of_threads_or_the_order_of_the_groups()
    {
        LessonOutlook one = Watch.Outlook(HalfWay, At(40), 200, new ParallelOptions { MaxDegreeOfParallelism = 1 });
        LessonOutlook four = Watch.Outlook([.. HalfWay.Reverse()], At(40), 200, new ParallelOptions { MaxDegreeOfParallelism = 4 });
        Assert.Equal(one.Groups, four.Groups);
        Assert.Equal((one.End, one.Fits, one.Bottleneck), (four.End, four.Fits, four.Bottleneck));
    }

    [Fact]
    public void A_later_bell_never_lessens_the_chance_and_moves_the_calls_with_it()
    {
        // Where vessels break, a later bell lets groups start again that would have joined others, and so may end later.
        var unbroken = new LessonWatch(
            new PlanSettings(Unbroken, 12, [Centigram, Centigram], 100).WithPrepared(true), AtomicWeights.Iupac2024, seed: 5);
        double before = -1;
        LastCalls? calls = null;
        foreach (double bell in (double[])[90, 100, 110, 120, 130, 140, 150, 160, 170])
        {
            LessonOutlook outlook = unbroken.Outlook(HalfWay, At(40, bell), 400);
            Assert.True(outlook.Fits.Value >= before);
            Assert.Equal(calls?.Reheat + 10 ?? outlook.Calls.Reheat, outlook.Calls.Reheat);
            (before, calls) = (outlook.Fits.Value, outlook.Calls);
        }

        Assert.True(before > 0.9);
    }

    /// <summary>
    /// One step from 4 to 12 min, most often 6: a beta law with shapes 2 and 4, whose survival at x of the range is
    /// (1 - x)^4 (1 + 4x). After 8 min x = 0.5 and the survival is 0.1875; of those that last longer, half last to where it is
    /// 0.09375, and nine in ten to where it is 0.01875.
    /// </summary>
    [Fact]
    public void A_step_that_has_lasted_so_long_goes_on_by_its_law_given_that()
    {
        const string steps = """
              - { id: weigh-before, label: weigh, minutes: [1, 1, 1], kit: { balance: 1 }, reading: before, standing: judgement }
              - { id: fetch, label: fetch a rod, minutes: [1, 1, 1], kit: {}, standing: judgement }
              - { id: stir, label: stir, minutes: [4, 6, 12], kit: {}, standing: judgement }
              - { id: weigh-after, label: weigh, minutes: [0.001, 0.001, 0.001], kit: { balance: 1 }, reading: after, standing: judgement }
            """;
        Practical practical = Given.WithSteps(steps);
        var lesson = new LessonWatch(new PlanSettings(practical, 1, Given.Balances(1), 60).WithHeatings(1), AtomicWeights.Iupac2024, 3);
        LessonOutlook outlook = lesson.Outlook(
            [Group("before=28.84@9", practical: practical)], new LessonMoment(18, 60, 8), 20_000);
        Assert.Equal(10 + Quantile(0.09375), outlook.Groups[0].NextReading!.Value.Median, 0.03);
        Assert.Equal(10 + Quantile(0.01875), outlook.Groups[0].NextReading!.Value.Ninth, 0.05);

        // Told of the step itself the law is the same, whenever the reading before it was taken.
        LessonOutlook told = lesson.Outlook(
            [Group("before=28.84@8", told: new ToldStep("stir", 10), practical: practical)], new LessonMoment(18, 60, 7), 20_000);
        Assert.Equal(10 + Quantile(0.09375), told.Groups[0].NextReading!.Value.Median, 0.03);

        // Longer than the longest: it is due.
        LessonOutlook due = lesson.Outlook([Group("before=28.84@9", practical: practical)], new LessonMoment(25, 60, 8), 100);
        Assert.InRange(due.Groups[0].NextReading!.Value.Ninth, 25, 25.01);

        // By bisection of the survival, which no code of the program knows.
        static double Quantile(double survival)
        {
            (double low, double high) = (0, 1);
            for (int i = 0; i < 60; i++)
            {
                double x = (low + high) / 2;
                (low, high) = Math.Pow(1 - x, 4) * (1 + (4 * x)) > survival ? (x, high) : (low, x);
            }

            return 4 + (8 * low);
        }
    }

    [Fact]
    public void A_group_in_its_last_step_is_done_when_that_is()
    {
        GroupAtWork[] groups = [.. HalfWay[1..], Group(
            "empty=28.60@15 before=28.84@18 after=28.98@40 after2=28.98@58", told: new ToldStep("clear-up", 70), number: 1)];
        LessonOutlook outlook = Watch.Outlook(groups, At(71), 400);
        // Clearing up takes 5 to 12 min and its pace.
        Assert.Equal("clear-up", outlook.Groups[0].ProbablyAt!.Id);
        Assert.Null(outlook.Groups[0].NextReading);
        Assert.InRange(outlook.Groups[0].Done!.Value.Median, 70 + (5 * outlook.Pace.Factor), 70 + (12 * outlook.Pace.Factor));
        Assert.Equal(1, outlook.Groups[0].DoneByPacking.Value);
    }

    [Fact]
    public void Who_decided_to_heat_again_is_done_later_than_who_stops_and_after_the_last_call_nobody_heats()
    {
        const string changes = "empty=28.60@15 before=28.84@18 after=28.94@45 after2=28.98@62";
        double stops = Done(Group(changes, decided: new OwnDecision("after2", false, 63)), 70);
        double heats = Done(Group(changes, decided: new OwnDecision("after2", true, 63)), 70);
        // Undecided, its mass still changes, so by the trade's rule it heats.
        double undecided = Done(Group(changes), 70);
        double late = Done(Group(changes), 60);
        double constant = Done(Group("empty=28.60@15 before=28.84@18 after=28.98@45 after2=28.98@62"), 70);
        Assert.True(heats > stops + 15);
        Assert.True(undecided > stops + 15);
        // It stopped a minute after its weighing.
        Assert.Equal(stops, late + 1, 0.2);
        Assert.Equal(late, constant, 0.2);

        static double Done(GroupAtWork group, double call) =>
            Watch.Outlook([.. HalfWay[1..], group], At(64, lastHeating: call), 200).Groups[0].Done!.Value.Median;
    }

    [Fact]
    public void A_second_trial_still_to_come_is_counted()
    {
        var two = new LessonWatch(Plan.WithTrials(2).WithClass(1, 2), AtomicWeights.Iupac2024, 5);
        GroupAtWork first = Group("empty=28.60@15 before=28.84@18 after=28.98@45 after2=28.98@62", decided: new OwnDecision("after2", false, 63));
        double done = two.Outlook([first], At(64, 200), 200).Groups[0].Done!.Value.Median;
        var one = new LessonWatch(Plan.WithClass(1, 2), AtomicWeights.Iupac2024, 5);
        Assert.True(done > one.Outlook([first], At(64, 200), 200).Groups[0].Done!.Value.Median + 50);
    }
}
