using Calx.Engine.Tests.Practicals.Clock;
using Calx.Measurement.Distributions;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>What a teacher is shown and may accept.</summary>
public sealed class LearnedPriorsTests
{
    private static readonly Practical Magnesium = Given.Magnesium;

    private static readonly LearnedPriors Learned = LearnedPriors.Of(
        Magnesium, [.. Enumerable.Range(0, 4).Select(Lesson)], [.. Enumerable.Range(0, 12).Select(m => new BalanceCheckSeen("A", m, 0.2 * m, 0.757))], Drawn.NewClass);

    [Fact]
    public void Next_year_s_plan_says_what_it_learned()
    {
        LearnedChange.Time cooling = Assert.IsType<LearnedChange.Time>(Learned.Changes.Single(c => c.Id == "time:cool"));
        Assert.Equal("timed 48 times in four lessons", cooling.RestsOn);
        Assert.Equal("48 pieces in four lessons", Learned.Changes.Single(c => c.Id == "kit:crucible").RestsOn);
        Assert.InRange(cooling.After.Likely, 13, 15);
        Assert.Equal($"'Cool on the triangle' took {cooling.After.Likely:0} min, not 12.", cooling.Sentence);
    }

    [Fact]
    public void A_fault_that_was_found_more_often_is_told_with_what_it_rests_on()
    {
        FaultDefinition fault = Magnesium.Faults[0];
        LearnedChange.Rate rate = Assert.IsType<LearnedChange.Rate>(Learned.Changes.Single(c => c.Id == $"fault:{fault.Cause}"));
        Assert.Equal("48 groups in four lessons", rate.RestsOn);
        Assert.InRange(rate.After, fault.Rate, 7.5 / 12);
        Assert.Equal(
            FormattableString.Invariant($"'{char.ToUpperInvariant(fault.Label[0])}{fault.Label[1..]}' was found in {100 * rate.After:F0} % of the groups, not in {100 * fault.Rate:F0} %."),
            rate.Sentence);
        Assert.Equal("one group in one lesson", Learnt(1).RestsOn);
        Assert.Equal("lessons of other schools only", Learnt(1, "Elsewhere").RestsOn);

        LearnedChange Learnt(int groups, string school = "Larkmoor School") => Assert.Single(LearnedPriors.Of(
            Magnesium, [new PastLesson(school, "9E", [], [new FaultSeen(fault.Cause, groups, 0.5)], [])], [], Drawn.NewClass).Changes);
    }

    [Fact]
    public void Nothing_is_changed_that_was_not_accepted()
    {
        AcceptedPriors nothing = Learned.Accept([]);
        Assert.Same(Magnesium, nothing.Practical);
        var settings = new PlanSettings(Magnesium, 12, Given.Balances(2), 60);
        Assert.Same(settings, nothing.ApplyTo(settings));
        Assert.Throws<ArgumentException>(() => Learned.Accept(["time:nothing"]));
    }

    [Fact]
    public void What_was_accepted_enters_the_next_plan()
    {
        string cause = Magnesium.Faults[0].Cause;
        AcceptedPriors accepted = Learned.Accept(["time:cool", $"fault:{cause}", "kit:crucible"]);
        PlanSettings plan = accepted.ApplyTo(new PlanSettings(accepted.Practical, 12, Given.Balances(2), 60));
        Assert.Equal(accepted.Times["cool"].Likely, plan.Times["cool"].Likely);
        Assert.Equal(accepted.Rates[cause], plan.Practical.Faults[0].Rate);
        Assert.Equal(Magnesium.Faults[1].Rate, plan.Practical.Faults[1].Rate);
        Assert.Equal(accepted.Breaks["crucible"], plan.Practical.Kit.Single(k => k.Id == "crucible").Loss.Breaks);
        Assert.True(accepted.Rates[cause] > Magnesium.Faults[0].Rate);
        var own = new StepMinutes(1, 2, 3);
        PlanSettings kept = accepted.ApplyTo(new PlanSettings(accepted.Practical, 12, Given.Balances(2), 60).WithTime("cool", own));
        Assert.Same(own, kept.Times["cool"]);
    }

    [Fact]
    public void No_lessons_change_nothing() => Assert.Empty(LearnedPriors.Of(Magnesium, [], [], Drawn.NewClass).Changes);

    [Fact]
    public void A_difference_that_chance_explains_is_not_told()
    {
        var lesson = new PastLesson("Larkmoor School", "9E", [new StepSeen("cool", 13)], [new FaultSeen(Magnesium.Faults[0].Cause, 10, 4)], [new KitSeen("crucible", 12, 1)]);
        LearnedPriors learned = LearnedPriors.Of(Magnesium, [lesson], [], Drawn.NewClass);
        Assert.Equal(3, learned.Changes.Count);
        Assert.Empty(learned.Sentences);
    }

    [Fact]
    public void A_balance_that_drifts_by_more_than_half_a_division_a_year_is_told()
    {
        // The checks lie on a line of 0.2 divisions a month; months 0 to 11 have squares about their mean of 143, so the slope's
        // standard uncertainty is 0.757/√143, and Student's t with 10 degrees of freedom is 1.8125 (tables).
        LearnedDrift drift = Assert.Single(Learned.Drifts);
        Assert.Equal(0.2, drift.PerMonth, 1e-12);
        Assert.Equal(2 * 1.8125 * 0.757 / Math.Sqrt(143), drift.Interval.Width, 1e-4);
        Assert.Contains("Balance A drifts by 2.4 divisions a year", drift.Sentence, StringComparison.Ordinal);
        BalanceCheckSeen[] slow = [.. Enumerable.Range(0, 100).Select(m => new BalanceCheckSeen("B", m, 0.03 * m, 0.757))];
        Assert.Null(Assert.Single(LearnedPriors.Of(Magnesium, [], slow, Drawn.NewClass).Drifts).Sentence);
        Assert.Empty(LearnedPriors.Of(Magnesium, [], slow[..2], Drawn.NewClass).Drifts);
    }

    private static PastLesson Lesson(int number)
    {
        double[] minutes = [.. Enumerable.Range(0, 12).Select(i => 15.7 * Math.Exp(0.22 * StandardNormal.Quantile((i + 0.5) / 12)))];
        return new PastLesson(
            "Larkmoor School", $"class {number}", [.. minutes.Select(m => new StepSeen("cool", m)), new StepSeen("elsewhere", 3)],
            [new FaultSeen(Magnesium.Faults[0].Cause, 12, 7.5)], [new KitSeen("crucible", 12, 2)]);
    }
}
