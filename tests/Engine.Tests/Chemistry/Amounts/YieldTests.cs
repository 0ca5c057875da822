using Calx.Chemistry.Amounts;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;

namespace Calx.Engine.Tests.Chemistry.Amounts;

public class YieldTests
{
    [Fact]
    public void Copper_from_copper_sulfate_yields_77_3_per_cent()
    {
        // OpenStax, Chemistry 2e, 4.4 (from memory): 1.274 g of CuSO4, excess Zn, 0.392 g of Cu; 0.5072 g, 77.3 %.
        UncertainValue theory = Yield(Reactions.CopperFromSulfate, "Cu", Reactions.Put("CuSO4", 1.274)).MassInGrams;
        Assert.Equal(0.5072, theory.Value, 1e-4);
        Assert.Equal(77.3, Percent(UncertainValue.Exact(0.392), theory).Value, 1);
    }

    [Fact]
    public void A_burnt_ribbon_yields_95_5_per_cent_with_readings_counted_once()
    {
        // Readings 30.00, 30.24, 30.38 g; 24.3 and 16.0 g/mol: yield 95.5 % (by hand).
        var series = new ReadingSeries(new Balance(0.01));
        UncertainValue empty = series.Mass("empty", new WrittenNumber(30.00m));
        UncertainValue magnesium = series.Mass("before", new WrittenNumber(30.24m)) - empty;
        UncertainValue theory = Yield(Reactions.BurningMagnesium, "MgO", new WeighedReagent("Mg", magnesium)).MassInGrams;
        UncertainValue found = Percent(series.Mass("after", new WrittenNumber(30.38m)) - empty, theory);
        Assert.Equal(95.47, found.Value, 2);
        // By hand: 95.47 * 0.00757188 sqrt(1/0.38² + 1/0.24² + (1/0.24 - 1/0.38)²) = 3.731.
        Assert.Equal(3.731, found.StandardUncertainty, 3);
    }

    // Mass ratios added up by hand from IUPAC's abridged atomic weights.
    [Theory]
    [InlineData(1, 40.304, 1, 24.305, 1.6583)] // MgO from Mg
    [InlineData(1, 63.546, 1, 55.845, 1.1379)] // Cu from Fe, iron(II)
    [InlineData(3, 63.546, 2, 55.845, 1.7068)] // Cu from Fe, iron(III)
    [InlineData(2, 107.87, 1, 63.546, 3.3950)] // Ag from Cu
    [InlineData(1, 56.077, 1, 100.086, 0.5603)] // CaO from CaCO3
    public void Grams_of_product_for_a_gram_of_reactant(long made, double product, long used, double reactant, double ratio) =>
        Assert.Equal(
            ratio,
            Reaction.MassRatio(Reactions.Part("product", made, product), Reactions.Part("reactant", used, reactant)).Value,
            4);

    [Fact]
    public void Molar_masses_that_share_an_element_cancel_in_a_mass_ratio()
    {
        UncertainValue magnesium = UncertainValue.Of("Ar(Mg)", 24.305, 0.001);
        UncertainValue oxide = magnesium + UncertainValue.Exact(15.999);
        UncertainValue ratio = Reaction.MassRatio(new ReactionPart("MgO", 1, oxide), new ReactionPart("Mg", 1, magnesium));
        // ratio = 1 + 15.999/Ar(Mg): u = 15.999 * 0.001/24.305² = 2.7083e-5, by hand; independent masses would give 8e-5.
        Assert.Equal(2.7083e-5, ratio.StandardUncertainty, 9);
    }

    [Fact]
    public void The_yield_of_a_mixture_follows_its_limiting_reagent()
    {
        // By hand: 2.00 g of Si limits; 2.00/28.085/3 * 140.283 = 3.3300 g.
        TheoreticalYieldResult.Found found =
            Yield(Reactions.SiliconNitride, "Si3N4", Reactions.Put("N2", 1.50), Reactions.Put("Si", 2.00));
        Assert.Equal(3.3300, found.MassInGrams.Value, 4);
        Assert.Equal("Si", Assert.IsType<LimitingReagentResult.Found>(found.Basis).Limiting.Formula);
    }

    [Fact]
    public void Reagents_that_tie_give_the_yield_of_either()
    {
        TheoreticalYieldResult.Found found =
            Yield(Reactions.BurningMagnesium, "MgO", Reactions.Put("Mg", 0.243), Reactions.Put("O2", 0.160));
        Assert.Equal(0.403, found.MassInGrams.Value, 12);
        Assert.IsType<LimitingReagentResult.Tie>(found.Basis);
    }

    [Fact]
    public void Yields_without_an_answer_are_told_why()
    {
        Assert.Equal("Mg is not made in this reaction", Assert.IsType<TheoreticalYieldResult.CannotTell>(
            TheoreticalYield.Of(Reactions.BurningMagnesium, [Reactions.Put("Mg", 1)], "Mg")).Reason);
        Assert.Equal("the mass of Mg is negative", Assert.IsType<TheoreticalYieldResult.CannotTell>(
            TheoreticalYield.Of(Reactions.BurningMagnesium, [Reactions.Put("Mg", -1)], "MgO")).Reason);
        Assert.IsType<PercentageYield.CannotTell>(PercentageYield.Of(UncertainValue.Exact(1), UncertainValue.Exact(0)));
        Assert.IsType<PercentageYield.CannotTell>(PercentageYield.Of(UncertainValue.Exact(-1), UncertainValue.Exact(1)));
    }

    private static TheoreticalYieldResult.Found Yield(Reaction reaction, string product, params WeighedReagent[] reagents) =>
        Assert.IsType<TheoreticalYieldResult.Found>(TheoreticalYield.Of(reaction, reagents, product));

    private static UncertainValue Percent(UncertainValue mass, UncertainValue theory) =>
        Assert.IsType<PercentageYield.Found>(PercentageYield.Of(mass, theory)).Percent;
}
