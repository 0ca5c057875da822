using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>What must hold of anything learned.</summary>
public sealed class LearningLawsTests
{
    private static readonly TimePrior Prior = new(Drawn.Cooling);

    [Fact]
    public void Without_lessons_the_file_s_times_stay_as_they_are() =>
        Assert.Same(Drawn.Cooling, TimeRule.Of(Drawn.Cooling, Drawn.Step, [], Drawn.NewClass).Minutes);

    [Fact]
    public void The_order_of_lessons_and_groups_changes_nothing()
    {
        var stream = new RandomStream(20261126, 1);
        PastLesson[] lessons = [.. Enumerable.Range(0, 6).Select(i => Drawn.Lesson(stream, Prior, i / 2, 0.2, 0.1, 0.2, bell: 0.5))];
        PastLesson[] turned = [.. lessons.Reverse().Select(l => new PastLesson(l.School, l.ClassName, [.. l.Steps.Reverse()], [], []))];
        Timed one = TimeRule.Of(Drawn.Cooling, Drawn.Step, lessons, Drawn.NewClass);
        Timed other = TimeRule.Of(Drawn.Cooling, Drawn.Step, turned, Drawn.NewClass);
        Assert.Equal((one.Minutes.Least, one.Minutes.Likely, one.Minutes.Most), (other.Minutes.Least, other.Minutes.Likely, other.Minutes.Most));
        Assert.Equal((one.Mean, one.OneGroup), (other.Mean, other.OneGroup));

        ClassCount[] counts = [.. Enumerable.Range(0, 6).Select(i => Drawn.Count(i / 2, 12, 0.1 + (0.7 * i)))];
        Assert.Equal(
            RateRule.Of(0.2, ClassCount.Together(counts), Drawn.NewClass, 12), RateRule.Of(0.2, ClassCount.Together(counts.Reverse()), Drawn.NewClass, 12));
    }

    [Fact]
    public void One_absurd_lesson_does_not_throw_the_plan_far()
    {
        var stream = new RandomStream(20261126, 2);
        PastLesson[] usual = [.. Enumerable.Range(0, 5).Select(i => Drawn.Lesson(stream, Prior, i, 0, 0.1, 0.2))];
        PastLesson absurd = Drawn.Lesson(stream, Prior, 9, Math.Log(6), 0, 0.2);
        double before = TimeRule.Of(Drawn.Cooling, Drawn.Step, usual, Drawn.NewClass).Minutes.Likely;
        double after = TimeRule.Of(Drawn.Cooling, Drawn.Step, [.. usual, absurd], Drawn.NewClass).Minutes.Likely;
        Assert.InRange(after / before, 0.97, 1.06);
        Assert.InRange(TimeRule.Of(Drawn.Cooling, Drawn.Step, [absurd], Drawn.NewClass).Minutes.Likely / Drawn.Cooling.Likely, 1, 1.8);

        ClassCount[] counts = [.. Enumerable.Range(0, 5).Select(i => Drawn.Count(i, 12, 1))];
        Assert.InRange(RateRule.Of(0.1, [.. counts, Drawn.Count(9, 15, 15)], Drawn.NewClass, 12).Rate - RateRule.Of(0.1, counts, Drawn.NewClass, 12).Rate, 0, 0.02);
        Assert.InRange(RateRule.Of(0.1, [Drawn.Count(9, 15, 15)], Drawn.NewClass, 12).Rate, 0.1, 0.15);
    }

    [Fact]
    public void A_group_that_forgot_to_say_when_it_was_done_changes_nothing()
    {
        double[] minutes = [10, 11, 12, 13, 12, 11];
        Timed without = TimeRule.Of(Drawn.Cooling, Drawn.Step, [Drawn.Timed(1, minutes)], Drawn.NewClass);
        Assert.Equal(without.Mean, TimeRule.Of(Drawn.Cooling, Drawn.Step, [Drawn.Timed(1, [.. minutes, 95])], Drawn.NewClass).Mean);
        Assert.Equal(without.Mean, TimeRule.Of(Drawn.Cooling, Drawn.Step, [Drawn.Timed(1, [.. minutes, 0.02])], Drawn.NewClass).Mean);
        Assert.Equal(6, without.Times);
    }

    [Fact]
    public void A_file_that_is_far_off_is_outvoted_by_many_lessons()
    {
        var stream = new RandomStream(20261126, 3);
        PastLesson[] slow = [.. Enumerable.Range(0, 12).Select(i => Drawn.Lesson(stream, Prior, i, Math.Log(4), 0.1, 0.2))];
        Assert.InRange(TimeRule.Of(Drawn.Cooling, Drawn.Step, slow, Drawn.NewClass).Minutes.Likely, 3.6 * 10, 4.4 * 10);
    }

    [Fact]
    public void Groups_that_the_bell_stopped_are_not_taken_for_quick_ones()
    {
        double[] done = [.. Enumerable.Repeat(11.0, 4)];
        double[] stopped = [.. Enumerable.Repeat(12.0, 8)];
        double without = Likely(Drawn.Timed(1, done));
        double taken = Likely(Drawn.Timed(1, [.. done, .. stopped]));
        Assert.True(Likely(Drawn.Timed(1, done, stopped)) > Math.Max(without, taken) + 0.3);

        static double Likely(PastLesson lesson) => TimeRule.Of(Drawn.Cooling, Drawn.Step, [lesson], Drawn.NewClass).Minutes.Likely;
    }

    [Fact]
    public void A_class_s_own_lessons_count_more_for_it_than_for_others()
    {
        PastLesson[] lessons = [.. Enumerable.Range(0, 4).Select(i => Drawn.Timed(i, Enumerable.Repeat(i == 3 ? 14.0 : 10.0, 10)))];
        double itself = TimeRule.Of(Drawn.Cooling, Drawn.Step, lessons, new NextLesson("Larkmoor School", "class 3", 12)).Minutes.Likely;
        double another = TimeRule.Of(Drawn.Cooling, Drawn.Step, lessons, Drawn.NewClass).Minutes.Likely;
        double elsewhere = TimeRule.Of(Drawn.Cooling, Drawn.Step, lessons, new NextLesson("Elsewhere", "class 3", 12)).Mean.Width;
        Assert.True(itself > another + 0.5);
        Assert.True(elsewhere > TimeRule.Of(Drawn.Cooling, Drawn.Step, lessons, Drawn.NewClass).Mean.Width);
    }

    [Fact]
    public void Steps_that_always_take_the_same_or_no_time_at_all_can_be_learned()
    {
        Timed fixedTime = TimeRule.Of(new StepMinutes(5, 5, 5), Drawn.Step, [Drawn.Timed(1, [6, 6, 6])], Drawn.NewClass);
        Assert.InRange(fixedTime.Minutes.Likely, 5, 6);
        Timed fromZero = TimeRule.Of(new StepMinutes(0, 1, 4), Drawn.Step, [Drawn.Timed(1, [2, 3, 0.001])], Drawn.NewClass);
        Assert.Equal(0, fromZero.Minutes.Least);
        Assert.True(fromZero.Minutes.Likely <= fromZero.Minutes.Most && double.IsFinite(fromZero.OneGroup.High));
    }
}
