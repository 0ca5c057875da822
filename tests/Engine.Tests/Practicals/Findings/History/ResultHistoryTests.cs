using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Findings.History;

namespace Calx.Engine.Tests.Practicals.Findings.History;

// Invented lessons of burning magnesium, one a year.
public class ResultHistoryTests
{
    // Values 0.91, 0.97, 0.94 of equal uncertainty: mean 0.94. Q = (0.03² + 0.03²)/0.03² = 2 with 2 degrees of freedom.
    [Fact]
    public void Lessons_that_agree_are_put_together()
    {
        ResultHistory history = Of(0.03, 0.91, 0.97, 0.94);

        Assert.Equal(0.94, history.Pooled!.Value, 1e-9);
        Assert.Equal(2, history.Pooled.Q, 1e-9);
        Assert.Contains(history.Sentences, s => s.EndsWith("they differ by no more than their own uncertainties explain.", StringComparison.Ordinal));
    }

    // The same values ten times as sure: Q = 200.
    [Fact]
    public void Lessons_that_do_not_agree_say_that_something_was_not_the_same()
    {
        Assert.Contains(Of(0.003, 0.91, 0.97, 0.94).Sentences, s => s.EndsWith("something was not the same in every lesson.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_value_that_falls_year_by_year_is_told_with_what_to_look_for()
    {
        ResultHistory history = Of(0.01, 1.00, 0.96, 0.92, 0.88, 0.84, 0.80);

        var drift = Assert.IsType<Drift.Judged>(history.Drift);
        Assert.Equal(-0.04, drift.Slope, 1e-4); // A year of the calendar has 365 or 366 days, one on average 365.25.
        Assert.Contains(history.Sentences, s => s.StartsWith("The value moves by −0.040 a year", StringComparison.Ordinal));
    }

    [Fact]
    public void Years_that_keep_to_one_side_of_the_accepted_value_point_to_the_method()
    {
        Assert.EndsWith("belongs to the method, not to one class.", Of(0.02, [0.93, 0.95, 0.94, 0.92], accepted: 1).AgainstAccepted, StringComparison.Ordinal);
        Assert.EndsWith("which chance explains.", Of(0.05, [0.98, 1.03, 1.00, 0.96], accepted: 1).AgainstAccepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_lessons_are_too_few_to_judge_and_none_gives_no_value()
    {
        ResultHistory two = Of(0.03, [0.95, 0.97], accepted: 1);

        Assert.Null(two.AgainstAccepted);
        Assert.Equal("Three lessons on different days are needed before a drift can be told from chance.", two.Sentences[^1]);
        Assert.Equal("No lesson of this practical has given a value yet.", Assert.Single(Of(0.03).Sentences));
    }

    [Fact]
    public void Sentences_tell_no_accepted_value()
    {
        Assert.All(Of(0.02, [0.93, 0.95, 0.94, 0.92], accepted: 1).Sentences, s => Assert.DoesNotContain("accepted", s, StringComparison.Ordinal));
    }

    [Fact]
    public void A_lesson_takes_its_value_and_interval_from_the_class()
    {
        ClassFindings found = ClassAnalysis.Of(
            Given.Magnesium, Given.Class(Given.Magnesium, [.. DrawnClass.Of(groups: 8, reacted: 1, seed: 3)]), Given.Weights, Given.NoCauses);
        LessonResult lesson = LessonResult.Of("2026/27 9F", new DateOnly(2026, 11, 25), found)!;

        Assert.Equal(found.Class.Find("moleRatio")!.Value, lesson.Value);
        Assert.Equal(found.Class.Find("moleRatio")!.Interval, lesson.Interval);
    }

    [Fact]
    public void Results_that_are_no_numbers_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new LessonResult("x", default, double.NaN, 1, new CoverageInterval(0, 1, 0.95)));
        Assert.Throws<ArgumentException>(() => new LessonResult(" ", default, 1, 1, new CoverageInterval(0, 1, 0.95)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new LessonResult("x", default, 1, 0, new CoverageInterval(0, 1, 0.95)));
    }

    private static ResultHistory Of(double u, params double[] values) => Of(u, values, null);

    private static ResultHistory Of(double u, double[] values, double? accepted) => ResultHistory.Of(
        Given.Magnesium,
        [.. values.Select((v, i) => new LessonResult($"{2018 + i}/{19 + i} 9F", new DateOnly(2018 + i, 11, 20), v, u, new CoverageInterval(v - (2 * u), v + (2 * u), 0.95)))],
        accepted);
}
