using Calx.Chemistry.Elements;
using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>Three groups at one balance, every time certain, worked out on paper and looked at while they work.</summary>
public sealed class OutlookByHandTests
{
    /// <summary>
    /// The drawn chart, in minutes; the class is briefed from 0 to 2, b is the balance.
    /// <code>
    /// group 1: set up 2-4, b 4-7, heat 7-12, cool 12-18, b 18-21, clear up 21-24
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
          - { id: weigh-after, label: weigh, minutes: [3, 3, 3], kit: { balance: 1 }, reading: after, round: each, standing: judgement }
          - { id: clear-up, label: clear up, minutes: [3, 3, 3], kit: {}, alongside: cool, standing: judgement }
          - { id: talk, label: talk, minutes: [1, 1, 1], kit: {}, per: class, standing: judgement }
        """;

    private static readonly Practical Practical = Given.WithSteps(Steps);

    private static readonly LessonWatch Lesson = new(
        new PlanSettings(Practical, 3, Given.Balances(1), 40).WithHeatings(1), AtomicWeights.Iupac2024, 1);

    private static readonly (double Before, double FlameOut, double After, double Done)[] Paper = [(7, 12, 21, 24), (10, 15, 24, 27), (13, 18, 27, 30)];

    /// <summary>What is known of the groups at a minute.</summary>
    private static GroupAtWork[] Known(double now, bool flames) =>
    [
        .. Paper.Select((p, i) => Group(
            FormattableString.Invariant($"{(p.Before <= now ? $"before=28.84@{p.Before}" : "")} {(p.After <= now ? $"after=28.98@{p.After}" : "")}"),
            flameOut: flames && p.FlameOut <= now ? p.FlameOut : null,
            number: i + 1,
            practical: Practical)),
    ];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(9)]
    [InlineData(11.5)]
    [InlineData(14)]
    [InlineData(17)]
    [InlineData(20)]
    [InlineData(22.5)]
    [InlineData(25)]
    [InlineData(28)]
    [InlineData(29.5)]
    public void At_every_minute_the_rest_is_that_of_the_paper(double now)
    {
        foreach (bool flames in (bool[])[true, false])
        {
            LessonOutlook outlook = Lesson.Outlook(Known(now, flames), new LessonMoment(now, 40, now < 2 ? null : 2), 20);
            Assert.Equal(31, outlook.End.Median, 6);
            for (int g = 0; g < 3; g++)
            {
                Assert.Equal(Math.Max(Paper[g].Done, now), outlook.Groups[g].Done!.Value.Median, 6);
                double? next = now < Paper[g].Before ? Paper[g].Before : now < Paper[g].After ? Paper[g].After : null;
                Assert.Equal(next ?? -1, outlook.Groups[g].NextReading?.Median ?? -1, 6);
            }
        }
    }

    [Fact]
    public void Where_a_group_probably_is_follows_the_clock_when_nobody_taps()
    {
        LessonOutlook outlook = Lesson.Outlook(Known(14, flames: false), new LessonMoment(14, 40, 2), 20);
        Assert.Equal(["cool", "heat", "heat"], outlook.Groups.Select(g => g.ProbablyAt!.Id));
    }

    [Fact]
    public void When_work_began_is_reckoned_back_where_nobody_said_it()
    {
        // Group 1 has weighed at 7: 3 min of weighing and 2 of setting up before it, so work began at 2.
        LessonOutlook outlook = Lesson.Outlook(Known(8, flames: false), new LessonMoment(8, 40), 20);
        Assert.Equal(31, outlook.End.Median, 6);
    }

    [Fact]
    public void A_group_that_is_away_is_not_waited_for()
    {
        GroupAtWork[] two = [.. Known(14, true)[..2], Group("", number: 3, condition: new GroupCondition.Away(), practical: Practical)];
        LessonOutlook outlook = Lesson.Outlook(two, new LessonMoment(14, 40, 2), 20);
        // Group 2 is done at 27, and the talk takes 1.
        Assert.Equal(28, outlook.End.Median, 6);
        Assert.Null(outlook.Groups[2].Done);
        Assert.Null(outlook.Groups[2].ProbablyAt);
    }

    [Fact]
    public void A_group_that_joined_another_goes_on_with_what_follows_the_trials()
    {
        GroupAtWork[] groups = [.. Known(14, true)[..2], Group("before=28.84@13", number: 3, condition: new GroupCondition.Joined(1), practical: Practical)];
        LessonOutlook outlook = Lesson.Outlook(groups, new LessonMoment(14, 40, 2), 20);
        Assert.Equal(16, outlook.Groups[2].Done!.Value.Median, 6);
        Assert.Equal(1, outlook.Groups[2].DoneByPacking.Value);
    }

    [Fact]
    public void A_group_that_is_late_makes_the_end_later_by_as_much()
    {
        // At 22 the third group's vessel, out of the flame at 18, should be weighed from 24 on; its flame was out at 21 instead.
        GroupAtWork[] groups = [.. Known(22, true)[..2], Group("before=28.84@13", flameOut: 21, number: 3, practical: Practical)];
        LessonOutlook outlook = Lesson.Outlook(groups, new LessonMoment(22, 40, 2), 20);
        Assert.Equal(33, outlook.Groups[2].Done!.Value.Median, 6);
        Assert.Equal(34, outlook.End.Median, 6);
    }

    [Fact]
    public void The_bell_decides_what_fits_and_not_when_things_end()
    {
        LessonOutlook late = Lesson.Outlook(Known(14, true), new LessonMoment(14, 31, 2), 20);
        LessonOutlook soon = Lesson.Outlook(Known(14, true), new LessonMoment(14, 30.9, 2), 20);
        Assert.Equal((1.0, 0.0), (late.Fits.Value, soon.Fits.Value));
        Assert.Equal(late.End, soon.End);
        // Packing begins 10 min before the bell: the second group's last reading is taken at 24.
        Assert.Equal([1.0, 1.0, 0.0], Lesson.Outlook(Known(14, true), new LessonMoment(14, 34, 2), 20).Groups.Select(g => g.DoneByPacking.Value));
    }

    [Fact]
    public void What_a_class_waits_for_is_named()
    {
        LessonOutlook outlook = Lesson.Outlook(Known(14, true), new LessonMoment(14, 40, 2), 20);
        Assert.Equal("No queue matters; the end most often waits for group 3 (100 in 100).", outlook.Bottleneck);
        Assert.Equal(3, outlook.WaitsFor);
        // Seen from minute 3 groups 2 and 3 wait 3 and 6 min: 3 each.
        Assert.Equal("A group still waits 3 min for the balance until the end.",
            Lesson.Outlook(Known(3, true), new LessonMoment(3, 40, 2), 20).Bottleneck);
    }

    [Fact]
    public void The_sentence_on_whom_the_end_waits_for_says_where_it_is_in_the_words_of_its_tile()
    {
        LessonOutlook outlook = Lesson.Outlook(Known(14, true), new LessonMoment(14, 40, 2), 20);
        Assert.Equal(
            "No queue matters; the end most often waits for group 3 (100 in 100), now: heat gently.",
            outlook.SentencesWith(group => group == 3 ? "heat gently" : "elsewhere")[^1]);
        Assert.Equal(outlook.Bottleneck, outlook.SentencesWith(_ => null)[^1]);
        // Where groups wait for the balance, no one group is named.
        Assert.DoesNotContain("now:", Lesson.Outlook(Known(3, true), new LessonMoment(3, 40, 2), 20).SentencesWith(_ => "heat")[^1], StringComparison.Ordinal);
    }
}
