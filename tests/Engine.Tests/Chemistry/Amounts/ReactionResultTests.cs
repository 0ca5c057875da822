using Calx.Chemistry.Amounts;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Equations;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Chemistry.Amounts;

public class ReactionResultTests
{
    [Theory]
    [InlineData("Mg + O2 -> MgO", 2, 2)]
    [InlineData("2Mg + O2 -> 2MgO", 2, 2)]
    [InlineData("4Mg(s) + 2O2(g) -> 4MgO(s)", 4, 4)]
    public void Numbers_are_those_written_where_they_balance_and_else_those_that_do(string text, long used, long made)
    {
        Reaction reaction = Found(text);
        Assert.Equal(used, reaction.Reactant("Mg")?.Number);
        Assert.Equal(made, reaction.Product("MgO")?.Number);
    }

    [Fact]
    public void Grams_of_oxide_per_gram_of_magnesium_follow_from_the_equation()
    {
        // 40.304/24.305 = 1.6583 from IUPAC's abridged weights; only oxygen over magnesium is uncertain.
        Reaction reaction = Found("2Mg + O2 -> 2MgO");
        UncertainValue ratio = Reaction.MassRatio(reaction.Product("MgO")!, reaction.Reactant("Mg")!);
        Assert.Equal(1.6583, ratio.Value, 4);
        double independent = Math.Sqrt(
            Math.Pow(reaction.Product("MgO")!.MolarMassInGramsPerMole.RelativeStandardUncertainty, 2)
            + Math.Pow(reaction.Reactant("Mg")!.MolarMassInGramsPerMole.RelativeStandardUncertainty, 2)) * ratio.Value;
        Assert.InRange(ratio.StandardUncertainty, 0, 0.9 * independent);
    }

    [Fact]
    public void A_substance_that_stands_twice_on_a_side_counts_once()
    {
        Reaction reaction = Found("Na2CO3 + 2HCl -> 2NaCl + H2O(l) + CO2(g)");
        Assert.Equal(["NaCl", "H2O", "CO2"], reaction.Products.Select(part => part.Formula));
        Reaction twice = Found("2H2 + O2 -> H2O(l) + H2O(g)");
        Assert.Equal(2, Assert.Single(twice.Products).Number);
    }

    [Theory]
    [InlineData("Mg + O2 -> CaO")]
    [InlineData("KClO3 + HCl -> KCl + Cl2 + ClO2 + H2O")]
    [InlineData("Cu^2+ + 2e^- -> Cu")]
    [InlineData("Tc + O2 -> TcO2")]
    public void An_equation_that_gives_no_amounts_says_why(string text) => Assert.NotEmpty(
        Assert.IsType<ReactionResult.CannotTell>(ReactionResult.Of(Read(text), AtomicWeights.Iupac2024)).Reason);

    [Fact]
    public void Copper_displaced_by_iron_depends_on_the_charge_assumed()
    {
        // 1.00 g of iron: 1.138 g of copper for iron(II), 1.707 g for iron(III) (by hand from abridged weights).
        Assert.Equal(1.138, Copper("Fe + CuSO4 -> FeSO4 + Cu"), 3);
        Assert.Equal(1.707, Copper("2Fe + 3CuSO4 -> Fe2(SO4)3 + 3Cu"), 3);
    }

    private static double Copper(string text) => Assert.IsType<TheoreticalYieldResult.Found>(
        TheoreticalYield.Of(Found(text), [new WeighedReagent("Fe", UncertainValue.Exact(1.00))], "Cu")).MassInGrams.Value;

    private static Reaction Found(string text) => Assert.IsType<ReactionResult.Found>(
        ReactionResult.Of(Read(text), AtomicWeights.Iupac2024)).Reaction;

    private static Equation Read(string text)
    {
        var read = Equation.Parse(text);
        return read.Succeeded ? read.Value : throw new ArgumentException($"{text}: {read.Fault}", nameof(text));
    }
}
