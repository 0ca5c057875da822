using Calx.Chemistry.Amounts;
using Calx.Measurement.Uncertainty;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Chemistry.Amounts;

public class LimitingReagentTests
{
    [Fact]
    public void Silicon_limits_the_making_of_silicon_nitride()
    {
        // OpenStax, Chemistry 2e, 4.4 (from memory): 2.00 g of Si and 1.50 g of N2; 0.0712 mol Si, 0.0535 mol N2.
        var found = Found(LimitingReagent.Find(
            Reactions.SiliconNitride, [Reactions.Put("Si", 2.00), Reactions.Put("N2", 1.50)]));
        Assert.Equal("Si", found.Limiting.Formula);
        Assert.Equal(0.0712, found.Reagents[0].Moles.Value, 4);
        Assert.Equal(0.0535, found.Reagents[1].Moles.Value, 4);
        Assert.Equal(1, found.Limiting.ProbabilityLimiting);
        // Left over by hand: (0.0535446 - 2 * 0.0712124 / 3) * 28.014 = 0.17003 g of N2, none of Si.
        Assert.Equal(0.1700, found.Reagents[1].LeftOverInGrams.Value, 4);
        Assert.Equal(0, found.Reagents[0].LeftOverInGrams.Value);
    }

    [Fact]
    public void A_reagent_that_limits_by_one_standard_uncertainty_does_so_with_probability_0_84()
    {
        // Extents 1.00 and 1.05 mol, each with 0.05/sqrt(2): the excess is its own standard uncertainty; Φ(1) = 0.841345.
        var reaction = new Reaction([Reactions.Part("A", 1, 1), Reactions.Part("B", 2, 1)], [Reactions.Part("C", 1, 3)]);
        double u = 0.05 / Math.Sqrt(2);
        var found = Found(LimitingReagent.Find(reaction, [Reactions.Put("A", 1.00, u), Reactions.Put("B", 2.10, 2 * u)]));
        Assert.Equal("A", found.Limiting.Formula);
        Assert.Equal(0.841345, found.Limiting.ProbabilityLimiting, 6);
        Assert.Equal(0.158655, found.Reagents[1].ProbabilityLimiting, 6);
    }

    [Fact]
    public void An_error_that_two_masses_share_does_not_blur_which_of_them_limits()
    {
        UncertainValue shared = UncertainValue.Of("span of the balance", 1, 0.1);
        var reaction = new Reaction([Reactions.Part("A", 1, 1), Reactions.Part("B", 1, 1)], [Reactions.Part("C", 1, 2)]);
        var found = Found(LimitingReagent.Find(
            reaction, [new WeighedReagent("A", 1.00 * shared), new WeighedReagent("B", 1.50 * shared)]));
        // Excess 0.5 with u = 0.05: ten standard uncertainties, where independent errors of 0.1 and 0.15 give 2.8.
        Assert.Equal(1, found.Limiting.ProbabilityLimiting, 9);
    }

    [Fact]
    public void Amounts_in_the_exact_ratio_tie()
    {
        var tie = Assert.IsType<LimitingReagentResult.Tie>(LimitingReagent.Find(
            Reactions.BurningMagnesium, [Reactions.Put("Mg", 0.243, 0.01), Reactions.Put("O2", 0.160, 0.01)]));
        Assert.Equal(["Mg", "O2"], tie.Limiting.Select(one => one.Formula));
        Assert.Equal(0.5, tie.Reagents[0].ProbabilityLimiting, 6);
    }

    [Fact]
    public void Probabilities_of_three_reagents_add_up_to_one_and_equal_ones_share_alike()
    {
        var reaction = new Reaction(
            [Reactions.Part("A", 1, 1), Reactions.Part("B", 1, 1), Reactions.Part("D", 1, 1)], [Reactions.Part("C", 1, 3)]);
        Gen.Double[0.01, 0.3].Always(
            u =>
            {
                var tie = Assert.IsType<LimitingReagentResult.Tie>(LimitingReagent.Find(
                    reaction, [Reactions.Put("A", 1, u), Reactions.Put("B", 1, u), Reactions.Put("D", 1, u)]));
                Assert.Equal(1, tie.Reagents.Sum(one => one.ProbabilityLimiting), 12);
                Assert.All(tie.Reagents, one => Assert.Equal(1 / 3.0, one.ProbabilityLimiting, 0.005));
            },
            iter: 5);
    }

    [Fact]
    public void Three_reagents_of_which_one_is_in_great_excess_are_as_two()
    {
        var reaction = new Reaction(
            [Reactions.Part("A", 1, 1), Reactions.Part("B", 1, 1), Reactions.Part("D", 1, 1)], [Reactions.Part("C", 1, 3)]);
        double u = 0.05 / Math.Sqrt(2);
        var found = Found(LimitingReagent.Find(
            reaction, [Reactions.Put("A", 1.00, u), Reactions.Put("B", 1.05, u), Reactions.Put("D", 9, 0.1)]));
        Assert.Equal(0.841345, found.Limiting.ProbabilityLimiting, 0.005);
    }

    [Fact]
    public void A_reagent_weighed_alone_limits_because_the_others_are_in_excess() => Assert.Equal(
        1,
        Found(LimitingReagent.Find(Reactions.BurningMagnesium, [Reactions.Put("Mg", 0.24, 0.01)])).Limiting.ProbabilityLimiting);

    [Fact]
    public void Questions_without_an_answer_are_told_why()
    {
        Assert.Equal("MgO is not used up in this reaction", Reason(Reactions.Put("MgO", 1)));
        Assert.Equal("the mass of Mg is negative", Reason(Reactions.Put("Mg", -0.1)));
        Assert.Equal("Mg is given more than once", Reason(Reactions.Put("Mg", 1), Reactions.Put("Mg", 1)));
        Assert.Equal("masses of one to 8 reagents are needed", Reason());
    }

    private static string Reason(params WeighedReagent[] reagents) => Assert.IsType<LimitingReagentResult.CannotTell>(
        LimitingReagent.Find(Reactions.BurningMagnesium, reagents)).Reason;

    private static LimitingReagentResult.Found Found(LimitingReagentResult result) =>
        Assert.IsType<LimitingReagentResult.Found>(result);
}
