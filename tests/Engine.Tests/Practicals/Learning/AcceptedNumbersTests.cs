using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>Numbers that were accepted, kept, and come back into a plan.</summary>
public sealed class AcceptedNumbersTests
{
    private static readonly Practical Magnesium = Given.Magnesium;

    private static readonly StepMinutes Cooling = Magnesium.Steps.Single(s => s.Id == "cool").Minutes;

    /// <summary>The page counts down to 'cool enough' by these times. Hot kit burns, whatever groups did: common practice, no source.</summary>
    [Fact]
    public void A_hot_vessel_is_never_taken_to_cool_faster_than_the_file_says()
    {
        AcceptedPriors accepted = AcceptedPriors.Of(Magnesium, new Dictionary<string, StepMinutes> { ["cool"] = new(5, 6, 22), ["reheat"] = new(1, 2, 3) }, Nothing, Nothing);
        Assert.Equal((Cooling.Least, Cooling.Likely, 22.0), (accepted.Times["cool"].Least, accepted.Times["cool"].Likely, accepted.Times["cool"].Most));
        Assert.Equal(2, accepted.Times["reheat"].Likely);
        LearnedPriors learned = LearnedPriors.Of(Magnesium, [.. Enumerable.Range(0, 4).Select(i => Drawn.Timed(i, Enumerable.Repeat(6.0, 12)))], [], Drawn.NewClass);
        LearnedChange.Time cool = Assert.IsType<LearnedChange.Time>(Assert.Single(learned.Changes));
        Assert.Equal(Cooling.Likely, cool.After.Likely);
        Assert.EndsWith("but a hot vessel does not cool faster for it: its time is not made shorter.", cool.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_says_from_where_its_numbers_are_and_which_times_differ()
    {
        PlanSettings plan = new PlanSettings(Magnesium, 12, Given.Balances(2), 100)
            .WithTime("cool", new StepMinutes(10, 14, 23)).WithTime("burn", new StepMinutes(5, 10.4, 20)).WithTime("reheat", new StepMinutes(4, 6, 8))
            .WithLearned(new LearnedFrom(6, "12 March 2026", "9F", ["cool", "burn"], 0));
        Assert.Contains("times learned from 6 lessons, accepted on 12 March 2026 for 9F", plan.InWords);
        Assert.Contains("'cool on the triangle' 14 min, not 12", plan.InWords);
        Assert.DoesNotContain(plan.InWords, w => w.Contains("lift the lid", StringComparison.Ordinal));
        Assert.Contains("'reheat' 4, 6, 8 min", plan.InWords);
        Assert.Contains(
            "rates learned from one lesson, accepted on 1 May 2026", plan.WithLearned(new LearnedFrom(1, "1 May 2026", "", [], 2)).InWords);
    }

    [Fact]
    public void What_the_practical_does_not_have_and_what_is_no_share_is_passed_over()
    {
        AcceptedPriors accepted = AcceptedPriors.Of(
            Magnesium, new Dictionary<string, StepMinutes> { ["nothing"] = Cooling }, new Dictionary<string, double> { ["misread"] = 1.5, ["nothing"] = 0.1 }, Nothing);
        Assert.Empty(accepted.Times);
        Assert.Same(Magnesium, accepted.Practical);
    }

    [Fact]
    public void Of_an_older_version_only_that_is_learned_which_the_new_one_still_has()
    {
        string newer = Magnesium.SourceText.Replace("version: 2", "version: 3", StringComparison.Ordinal)
            .Replace("minutes: [3, 5, 7]", "minutes: [3, 6, 7]", StringComparison.Ordinal).Replace("breaks: 0.08", "breaks: 0.05", StringComparison.Ordinal);
        Practical now = PracticalReader.Read(newer, "newer.yaml").Practical!;
        var lesson = new PastLesson("", "9F", [new StepSeen("cool", 14), new StepSeen("reheat", 5)], [new FaultSeen("misread", 12, 1)], [new KitSeen("lid", 12, 1), new KitSeen("crucible", 12, 1)]);
        PastLesson kept = DefinitionKept.Of(lesson, Magnesium, now);
        Assert.Equal(["cool"], kept.Steps.Select(s => s.Step));
        Assert.Equal(["misread"], kept.Faults.Select(f => f.Cause));
        Assert.Equal(["crucible"], kept.Kit.Select(k => k.Piece));
        Assert.Same(lesson, DefinitionKept.Of(lesson, Magnesium, Magnesium));
    }

    private static IReadOnlyDictionary<string, double> Nothing => new Dictionary<string, double>();
}
