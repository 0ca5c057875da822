using Calx.Chemistry.Elements;
using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>How fast a class works beside its plan. Four groups with a balance each and certain times: set up 2 to 12 from a
/// beginning at 2, weigh to 14, stir to 24, weigh to 26, clear up to 30.</summary>
public sealed class PaceTests
{
    private const string Steps = """
          - { id: brief, label: brief, minutes: [2, 2, 2], kit: {}, per: class, standing: judgement }
          - { id: set-up, label: set up, minutes: [10, 10, 10], kit: {}, standing: judgement }
          - { id: weigh-before, label: weigh, minutes: [2, 2, 2], kit: { balance: 1 }, reading: before, standing: judgement }
          - { id: stir, label: stir, minutes: [10, 10, 10], kit: {}, per: trial, standing: judgement }
          - { id: weigh-after, label: weigh, minutes: [2, 2, 2], kit: { balance: 1 }, reading: after, standing: judgement }
          - { id: clear-up, label: clear up, minutes: [4, 4, 4], kit: {}, standing: judgement }
        """;

    private static readonly Practical Practical = Given.WithSteps(Steps);

    private static readonly LessonWatch Lesson = new(
        new PlanSettings(Practical, 4, Given.Balances(4), 60).WithHeatings(1), AtomicWeights.Iupac2024, 1);

    private static LessonOutlook Outlook(double? began, params string[] groups) => Lesson.Outlook(
        [.. groups.Select((text, i) => Group(text, number: i + 1, practical: Practical))], new LessonMoment(30, 60, began), 20);

    [Fact]
    public void Nothing_heard_is_the_plans_pace()
    {
        TypicalPace pace = Outlook(29, "", "", "", "").Pace;
        Assert.Equal((1.0, null, 0), (pace.Factor, pace.Seen, pace.Groups));
    }

    [Fact]
    public void Four_groups_heard_count_half()
    {
        // The first reading is planned 12 min after the beginning at 2 and came after 18, 17.28, 17.28 and 15: the middle is 1.44, whose
        // square root is 1.2.
        TypicalPace pace = Outlook(2, "before=28.84@20", "before=28.84@19.28", "before=28.84@19.28", "before=28.84@17").Pace;
        Assert.Equal(1.44, pace.Seen!.Value, 9);
        Assert.Equal(1.2, pace.Factor, 9);
        Assert.Contains("44 % longer than planned (4 groups heard)", pace.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void One_group_heard_counts_a_fifth_and_the_latest_thing_heard_counts()
    {
        // The second reading is planned 24 min after the beginning; it came after 48. 2 to the power of a fifth.
        TypicalPace pace = Outlook(2, "before=28.84@20 after=28.98@50", "", "", "").Pace;
        Assert.Equal(Math.Pow(2, 0.2), pace.Factor, 9);
    }

    [Fact]
    public void Where_nobody_said_when_work_began_two_readings_of_a_group_tell()
    {
        // From reading to reading 12 min are planned, and 9 went by.
        TypicalPace pace = Outlook(null, "before=28.84@14 after=28.98@23", "before=28.84@14", "", "").Pace;
        Assert.Equal((0.75, 1), (pace.Seen!.Value, pace.Groups));
    }

    [Fact]
    public void What_is_left_lasts_as_many_times_as_long_but_nobody_hurries_what_cools()
    {
        // All at 1.44: what is left of stirring, begun at 19.28 and 12 min long now, ends at 31.28; weighing and clearing up take
        // 2.4 and 4.8.
        const string slow = "before=28.84@19.28";
        LessonOutlook outlook = Outlook(2, slow, slow, slow, slow);
        Assert.Equal(31.28 + 2.4, outlook.Groups[0].NextReading!.Value.Median, 6);
        Assert.Equal(31.28 + 2.4 + 4.8, outlook.End.Median, 6);

        Practical cools = Given.WithSteps(Steps.Replace(
            "{ id: stir, label: stir, minutes: [10, 10, 10], kit: {}, per: trial, standing: judgement }",
            "{ id: heat, label: heat, minutes: [4, 4, 4], kit: { burner: 1 }, per: trial, standing: judgement }\n"
            + "  - { id: stand, label: stand, minutes: [6, 6, 6], kit: {}, per: trial, standing: judgement }",
            StringComparison.Ordinal));
        var hot = new LessonWatch(new PlanSettings(cools, 4, Given.Balances(4), 60).WithHeatings(1), AtomicWeights.Iupac2024, 1);
        LessonOutlook cooled = hot.Outlook(
            [.. Enumerable.Range(1, 4).Select(i => Group(slow, number: i, practical: cools))], new LessonMoment(24, 60, 2), 20);
        // 4 min of heating at 1.2, 6 of cooling as ever.
        Assert.Equal(19.28 + 4.8 + 6 + 2.4, cooled.Groups[0].NextReading!.Value.Median, 6);
    }

    [Fact]
    public void No_class_is_taken_for_more_than_twice_as_slow_or_fast()
    {
        const string never = "before=28.84@20 after=28.98@29";
        LessonOutlook outlook = Outlook(-200, never, never, never, never);
        Assert.Equal(2, outlook.Pace.Factor);
    }

    [Fact]
    public void The_front_of_a_queue_is_no_fast_class()
    {
        // One balance: the plan lets four groups read at 14, 16, 18 and 20, and so they did.
        var queue = new LessonWatch(new PlanSettings(Practical, 4, Given.Balances(1), 60).WithHeatings(1), AtomicWeights.Iupac2024, 1);
        string[] readings = ["before=28.84@16", "before=28.84@14", "", ""];
        LessonOutlook outlook = queue.Outlook(
            [.. readings.Select((text, i) => Group(text, number: i + 1, practical: Practical))], new LessonMoment(17, 60, 2), 20);
        Assert.Equal(1, outlook.Pace.Seen!.Value, 9);
    }
}
