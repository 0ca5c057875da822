using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>Three groups at one balance, every time certain, worked out on paper.</summary>
public sealed class ByHandTests
{
    /// <summary>
    /// The drawn chart, in minutes; the class is briefed from 0 to 2, b is the balance.
    /// <code>
    /// group 1: set up 2-4, b 4-7, heat 7-12, cool 12-18 (writes 3 of it), b 18-21, clear up 21-24
    /// group 2: set up 2-4, waits to 7, b 7-10, heat 10-15, cool 15-21, b 21-24, clear up 24-27
    /// group 3: set up 2-4, waits to 10, b 10-13, heat 13-18, cool 18-24, b 24-27, clear up 27-30
    /// all: talk 30-31
    /// </code>
    /// </summary>
    private const string Steps = """
          - { id: brief, label: brief, minutes: [2, 2, 2], kit: {}, per: class, standing: judgement }
          - { id: set-up, label: set up, minutes: [2, 2, 2], kit: {}, standing: judgement }
          - { id: weigh-before, label: weigh, minutes: [3, 3, 3], kit: { balance: 1 }, reading: before, standing: judgement }
          - { id: heat, label: heat, minutes: [5, 5, 5], kit: { burner: 1 }, round: first, standing: judgement }
          - { id: reheat, label: reheat, minutes: [1, 1, 1], kit: { burner: 1 }, round: again, standing: judgement }
          - { id: cool, label: cool, minutes: [6, 6, 6], kit: {}, round: each, standing: judgement }
          - { id: write, label: write, minutes: [3, 3, 3], kit: {}, round: each, during: cool, standing: judgement }
          - { id: weigh-after, label: weigh, minutes: [3, 3, 3], kit: { balance: 1 }, reading: after, round: each, standing: judgement }
          - { id: clear-up, label: clear up, minutes: [3, 3, 3], kit: {}, alongside: cool, standing: judgement }
          - { id: talk, label: talk, minutes: [1, 1, 1], kit: {}, per: class, standing: judgement }
        """;

    private static PlanSettings Settings(int balances = 1) =>
        new PlanSettings(Given.WithSteps(Steps), 3, Given.Balances(balances), 40).WithHeatings(1);

    [Fact]
    public void Every_group_is_where_the_paper_says()
    {
        LessonTimeline lesson = Given.Forecast(Settings(), 100).Typical;
        Assert.Equal(31, lesson.EndMinute, 9);
        Assert.Equal([("brief", 0.0, 2.0)], Bars(lesson, 0));
        Assert.Equal(
            [("set-up", 2, 4), ("weigh-before", 4, 7), ("heat", 7, 12), ("cool", 12, 18), ("weigh-after", 18, 21), ("clear-up", 21, 24), ("wait:talk", 24, 30), ("talk", 30, 31)],
            Bars(lesson, 1));
        Assert.Equal(
            [("set-up", 2, 4), ("wait:weigh-before", 4, 7), ("weigh-before", 7, 10), ("heat", 10, 15), ("cool", 15, 21), ("weigh-after", 21, 24), ("clear-up", 24, 27), ("wait:talk", 27, 30), ("talk", 30, 31)],
            Bars(lesson, 2));
        Assert.Equal(
            [("set-up", 2, 4), ("wait:weigh-before", 4, 10), ("weigh-before", 10, 13), ("heat", 13, 18), ("cool", 18, 24), ("weigh-after", 24, 27), ("clear-up", 27, 30), ("talk", 30, 31)],
            Bars(lesson, 3));
    }

    [Fact]
    public void The_end_depends_on_the_queue_and_then_on_the_last_group()
    {
        LessonTimeline lesson = Given.Forecast(Settings(), 100).Typical;
        Assert.Equal(
            [(0, "brief"), (1, "set-up"), (1, "weigh-before"), (2, "weigh-before"), (3, "weigh-before"), (3, "heat"), (3, "cool"), (3, "weigh-after"), (3, "clear-up"), (0, "talk")],
            lesson.CriticalPath.Select(s => (s.Group, s.StepId)));
        Assert.Equal(lesson.EndMinute, lesson.CriticalPath.Sum(s => s.ToMinute - s.FromMinute), 9);
    }

    [Fact]
    public void Waits_and_use_are_those_of_the_paper()
    {
        LessonForecast lesson = Given.Forecast(Settings(), 100);
        ThingUse balance = Assert.Single(lesson.Uses);
        // Group 2 waits 3, group 3 waits 6, three groups: 3 each; six weighings of 3 min in 31.
        Assert.Equal((3.0, 6.0), (balance.MeanWait, balance.LongestWait));
        Assert.Equal(18.0 / 31, balance.Use, 9);
        Assert.Equal((31.0, 31.0, 31.0), (lesson.P10, lesson.P50, lesson.P90));
        Assert.Equal((1.0, "fits"), (lesson.Fits.Value, lesson.Verdict));
    }

    [Fact]
    public void What_is_done_during_something_else_takes_its_own_time_only_where_it_lasts_longer()
    {
        PlanSettings alongside = Settings().WithAlongside("clear-up");
        // Writing and clearing up together just fill the six minutes of cooling: the end is three minutes earlier.
        Assert.Equal(28, Given.Forecast(alongside, 100).P50, 9);
        PlanSettings slow = alongside.WithTime("clear-up", new StepMinutes(5, 5, 5));
        Assert.Equal(30, Given.Forecast(slow, 100).P50, 9);
    }

    [Fact]
    public void Two_balances_let_two_groups_weigh_at_once()
    {
        // Groups 1 and 2 weigh 4-7, group 3 waits for 3 min: set up 4, b 7-10, heat 15, cool 21, b 24, clear up 27, talk 28.
        LessonForecast lesson = Given.Forecast(Settings(2), 100);
        Assert.Equal((28.0, 1.0), (lesson.P50, Assert.Single(lesson.Uses).MeanWait));
    }

    [Fact]
    public void A_second_wave_starts_later()
    {
        // Group 2 begins 3 min later, so it does not meet group 3 at the balance: 1 weighs 4-7, 3 weighs 7-10, 2 (ready at 7) 10-13.
        LessonForecast lesson = Given.Forecast(Settings().WithStagger(3), 100);
        Assert.Equal((3.0 + 3.0) / 3, Assert.Single(lesson.Uses).MeanWait, 9);
        Assert.Equal(31, lesson.P50, 9);
    }

    [Fact]
    public void The_last_heating_is_called_so_that_the_group_is_done()
    {
        // From the beginning of a heating to the end a group takes 5 + 6 + 3 + 3 and the talk of 1; the first group also waits.
        LastCalls calls = Given.Forecast(Settings(), 100).Calls;
        // Nine in ten of (7 to 31, 10 to 31, 13 to 31): that of the second, 21, or the first, 24; and no reheat is planned.
        Assert.InRange(calls.FirstHeating!.Value, 40 - 24, 40 - 18);
        Assert.Null(calls.Reheat);
    }

    [Fact]
    public void A_flame_too_near_the_bell_is_a_lesson_that_does_not_fit()
    {
        Practical strict = Given.WithSteps(Steps, "{ gasOff: 15, late: 0, lateBy: [1, 4, 10], newStart: [1, 2, 4], standing: judgement }");
        PlanSettings settings = new PlanSettings(strict, 3, Given.Balances(1), 40).WithHeatings(1);
        // The last flame is out at 18: 22 min before a bell at 40, 14 min before one at 32.
        Assert.Equal(1, Given.Forecast(settings, 100).Fits.Value);
        LessonForecast shorter = Given.Forecast(settings.WithMinutes(32), 100);
        Assert.Equal((1.0, 0.0, 0.0), (shorter.OnTime.Value, shorter.GasOffInTime.Value, shorter.Fits.Value));
    }

    private static IEnumerable<(string, double, double)> Bars(LessonTimeline lesson, int group) => lesson.Bars
        .Where(b => b.Group == group)
        .Select(b => ((b.Kind == BarKind.Waiting ? "wait:" : "") + b.StepId, Math.Round(b.FromMinute, 9), Math.Round(b.ToMinute, 9)));
}
