using Calx.Chemistry.Amounts;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Chemistry.Amounts;

public class MolesTests
{
    // OpenStax, Chemistry 2e, 3.1, worked examples (from memory; the mass of argon with one more figure).
    [Theory]
    [InlineData("K", 4.7, 0.12, 2)]
    [InlineData("Ar", 0.0368, 0.00092, 5)]
    [InlineData("Cu", 5.00, 0.0787, 4)]
    [InlineData("C2H5NO2", 28.35, 0.378, 3)]
    [InlineData("C6H8O6", 0.0600, 0.000341, 6)]
    public void Amounts_agree_with_a_textbook(string formula, double grams, double moles, int decimals) => Assert.Equal(
        moles,
        Moles.FromMass(UncertainValue.Exact(grams), Read(formula), AtomicWeights.Iupac2024).Value.Value,
        decimals);

    [Fact]
    public void Mass_from_moles_from_mass_is_the_mass_with_its_own_uncertainty() => Gen.Double[0.01, 100].Always(
        grams =>
        {
            Formula sulfate = Read("CuSO4·5H2O");
            UncertainValue mass = UncertainValue.Of("mass", grams, 0.01);
            UncertainValue moles = Moles.FromMass(mass, sulfate, AtomicWeights.Iupac2024).Value;
            UncertainValue back = Moles.ToMass(moles, sulfate, AtomicWeights.Iupac2024).Value;
            Assert.Equal(grams, back.Value, 1e-12 * grams);
            Assert.Equal(0.01, back.StandardUncertainty, 1e-9);
        },
        iter: 100);

    [Fact]
    public void Amount_of_an_element_without_atomic_weight_is_a_fault() => Assert.False(
        Moles.FromMass(UncertainValue.Exact(1), Read("Tc2O7"), AtomicWeights.Iupac2024).Succeeded);

    [Fact]
    public void Mass_ratio_of_one_set_of_atomic_weights_is_better_known_than_its_molar_masses()
    {
        // n(O):n(Mg) of MgO's own masses is 1 whatever the weights are: m(O)/M(O) with m(O) = M(O).
        AtomicWeights weights = AtomicWeights.Iupac2024;
        UncertainValue oxygen = Read("O").MolarMass(weights);
        UncertainValue amount = Moles.FromMass(oxygen, Read("O"), weights).Value;
        Assert.Equal(1, amount.Value, 15);
        Assert.Equal(0, amount.StandardUncertainty, 15);
    }

    [Fact]
    public void A_hydrate_is_found_from_formulas_of_its_parts()
    {
        // A school sample: 0.88 g of water from 1.62 g of CuSO4, one decimal in the atomic masses: x = 4.82 (by hand).
        AtomicWeights school = AtomicWeightSets.Named("school-1dp");
        WeighedPart salt = WeighedPart.Of(Read("CuSO4(s)"), school, UncertainValue.Of("salt", 1.62, 0.01)).Value;
        WeighedPart water = WeighedPart.Of(Read("H2O(g)"), school, UncertainValue.Of("water", 0.88, 0.01)).Value;
        Assert.Equal("CuSO4", salt.Symbol);
        Assert.Equal(4.82, WaterOfCrystallisation.Ratio(salt, water).Value, 2);
        Assert.Equal(
            "CuSO4·5H2O",
            Assert.IsType<FormulaRanking.Ranked>(WaterOfCrystallisation.Candidates(salt, water)).Candidates[0].Formula);
        Assert.False(WeighedPart.Of(Read("Tc"), AtomicWeights.Iupac2024, UncertainValue.Exact(1)).Succeeded);
    }

    private static Formula Read(string text)
    {
        Parsed<Formula> read = Formula.Parse(text);
        return read.Succeeded ? read.Value : throw new ArgumentException($"{text}: {read.Fault}", nameof(text));
    }
}
