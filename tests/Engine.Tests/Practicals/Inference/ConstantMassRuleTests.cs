using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Model;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Engine.Tests.Practicals.Inference;

// The tolerance of two divisions is common practice, no source.
public class ConstantMassRuleTests
{
    // One reading at 0.01 g: √(1/12 + 0.49) · 0.01 g, worked by hand.
    private const double ReadingUncertainty = 0.0075719;

    private static readonly double ChangeOfOneGram = new IdealRun(Given.Magnesium, Given.Weights).ChangeOfOneGram;
    private readonly GroupEstimator twoDecimals = EstimatorFor(0.01m);
    private readonly GroupEstimator threeDecimals = EstimatorFor(0.001m);

    [Theory]
    [InlineData("30.40", "30.42", ConstantMassVerdict.Same)]
    [InlineData("30.42", "30.40", ConstantMassVerdict.Same)]
    [InlineData("30.35", "30.38", ConstantMassVerdict.Rising)]
    [InlineData("30.41", "30.38", ConstantMassVerdict.Falling)]
    public void Two_weighings_are_the_same_within_two_divisions(string first, string last, ConstantMassVerdict verdict) =>
        Assert.Equal(verdict, Judge("30.24", first, last).Verdict);

    [Fact]
    public void One_weighing_cannot_show_constant_mass()
    {
        ConstantMass found = Judge("30.24", "30.38");

        Assert.Equal(ConstantMassVerdict.OneWeighing, found.Verdict);
        Assert.Null(found.UnreactedAtMost);
        Assert.Null(found.LastChangeInGrams);
    }

    [Fact]
    public void No_weighing_after_heating_is_not_called_one()
    {
        ConstantMass found = Judge("30.24");

        Assert.Equal(ConstantMassVerdict.NotWeighed, found.Verdict);
        Assert.Equal("not weighed after heating yet", found.Words);
        Assert.Null(found.Word);
    }

    // 0.05 g of magnesium takes up 0.033 g of oxygen; two divisions of 0.01 g are more than half of that.
    [Fact]
    public void A_balance_whose_tolerance_is_more_than_half_of_the_change_cannot_tell() =>
        Assert.Equal(ConstantMassVerdict.CannotTell, Judge("30.05", "30.08", "30.08").Verdict);

    // No change: r ≤ 1.96 · √2 u / (0.24 g · 0.6583), the half-normal's point, by hand 0.1329.
    [Fact]
    public void No_change_on_reheating_still_leaves_an_eighth_possible() =>
        Assert.Equal(0.1329, Judge("30.24", "30.38", "30.38").UnreactedAtMost!.Value, 5e-4);

    [Fact]
    public void A_balance_ten_times_finer_leaves_a_tenth_of_that()
    {
        double fine = Judge(0.001, ReadingUncertainty / 10, "30.240", "30.380", "30.380").UnreactedAtMost!.Value;

        Assert.Equal(0.01329, fine, 2e-4);
    }

    [Fact]
    public void A_falling_mass_bounds_what_is_unreacted_more_tightly_than_a_steady_one() =>
        Assert.True(Judge("30.24", "30.39", "30.37").UnreactedAtMost < Judge("30.24", "30.38", "30.38").UnreactedAtMost);

    [Fact]
    public void A_mass_that_moved_against_the_reaction_gives_no_bound()
    {
        ConstantMass found = Judge("30.24", "30.40", "18.40");

        Assert.Equal(ConstantMassVerdict.Falling, found.Verdict);
        Assert.Null(found.UnreactedAtMost);
        Assert.Contains("lost or misread", found.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_samples_mass_there_is_no_bound_and_it_is_said()
    {
        ConstantMass found = Rule(0.01).Judge(
            Given.Group("1", ("before", "30.24"), ("after", "30.38"), ("after2", "30.38")), sample: null, ReadingUncertainty);

        Assert.Equal(ConstantMassVerdict.Same, found.Verdict);
        Assert.Null(found.UnreactedAtMost);
        Assert.Contains("without the mass of the sample", found.Reason, StringComparison.Ordinal);
    }

    // Copper under its oxide: no weighing tells how much of it there is.
    [Fact]
    public void Where_some_may_be_out_of_reach_a_constant_mass_bounds_nothing_and_it_is_said()
    {
        Practical practical = PracticalReader.Read(
            Given.Magnesium.SourceText.Replace("leastConversion: 0.5", "leastConversion: 0", StringComparison.Ordinal), "reach.yaml").Practical!;
        ConstantMass found = Judge(practical.Findings.ConstantMass!, 0.01, ReadingUncertainty, "30.24", "30.38", "30.38");

        Assert.Equal(ConstantMassVerdict.Same, found.Verdict);
        Assert.Null(found.UnreactedAtMost);
        Assert.Contains("where no reheat reaches it", found.Reason, StringComparison.Ordinal);
    }

    // Coverage by brute force: groups that truly have a share unreacted, drawn with the balance's noise. The bound must
    // hold at least 95 times in 100 for every share.
    [Theory]
    [InlineData(0.02)]
    [InlineData(0.10)]
    [InlineData(0.30)]
    public void The_bound_holds_for_what_is_truly_unreacted(double unreacted)
    {
        var stream = new Calx.Measurement.Distributions.RandomStream(7, 0);
        int held = 0;
        int draws = LongProofs.Cases(sample: 4_000, inFull: 200_000);
        for (int i = 0; i < draws; i++)
        {
            // A reheat that converts just the half that is assumed leaves as much as it converted.
            double gain = 0.24 * 0.6583 * unreacted;
            double first = 30.38 + ReadingUncertainty * stream.NextNormal();
            double last = 30.38 + gain + ReadingUncertainty * stream.NextNormal();
            held += Judge("30.2400", $"{first:F4}", $"{last:F4}").UnreactedAtMost >= unreacted ? 1 : 0;
        }

        Assert.InRange(held / (double)draws, 0.95 - LongProofs.ThreeErrors(0.95, draws), 1);
    }

    private ConstantMass Judge(string before, params string[] after) => Judge(0.01, ReadingUncertainty, before, after);

    private ConstantMass Judge(double division, double uncertainty, string before, params string[] after) =>
        Judge(Given.Magnesium.Findings.ConstantMass!, division, uncertainty, before, after);

    private ConstantMass Judge(ConstantMassDefinition definition, double division, double uncertainty, string before, params string[] after)
    {
        (string, string)[] weighings = [.. after.Select((digits, i) => (i == 0 ? "after" : $"after{i + 1}", digits))];
        GroupReadings group = Given.Group("1", [("empty", "30.00"), ("before", before), .. weighings]);
        var sample = (QuantityEstimate)(division == 0.01 ? twoDecimals : threeDecimals)
            .Estimate(group).Single(q => q.Quantity.Id == "sampleMass");
        return Rule(definition, division).Judge(group, sample, uncertainty);
    }

    private static GroupEstimator EstimatorFor(decimal division) => new(
        Given.Magnesium, new BalanceReport(new BalanceOptions(division), new Dictionary<string, decimal>()), Given.Weights);

    private static ConstantMassRule Rule(double division) => Rule(Given.Magnesium.Findings.ConstantMass!, division);

    private static ConstantMassRule Rule(ConstantMassDefinition definition, double division) =>
        new(definition, reacts: true, division, ChangeOfOneGram, EngineLanguage.British);
}
