using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Chemistry.Formulas;

public sealed class MolarMassTests
{
    // molar_masses_computed.csv: worked out with another program from the published table (see its head).
    [Fact]
    public void Molar_masses_agree_with_another_computation_to_six_decimals()
    {
        string[][] rows = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "molar_masses_computed.csv"))
            .Where(line => line[0] != '#').Skip(1).Select(line => line.Split(','))];
        Assert.Equal(54, rows.Length);
        Assert.All(rows, row =>
        {
            UncertainValue mass = Formula.Parse(row[0]).Value.MolarMass(AtomicWeights.Iupac2024);
            Assert.Equal(Number(row[3]), mass.Value, 1.001e-6);
            Assert.Equal(Number(row[4]), mass.StandardUncertainty, 1.001e-6);
            UncertainValue abridged = Formula.Parse(row[0]).Value.MolarMass(AtomicWeightSets.Named("iupac-abridged"));
            Assert.Equal(Number(row[1]), abridged.Value, 1.001e-6);
        });
    }

    [Fact]
    public void Molar_mass_of_hydrated_copper_sulfate_includes_the_water()
    {
        // School weights: 63.5 + 32 + 4 x 16 + 5 x 18 by hand.
        Formula hydrate = Formula.Parse("CuSO4·5H2O").Value;
        Assert.Equal(249.5, hydrate.MolarMass(AtomicWeightSets.Named("school-0dp")).Value, 12);
    }

    [Fact]
    public void Atoms_of_one_element_share_their_error_across_formulas()
    {
        // M(CuSO4·5H2O) - M(CuSO4) - 5 M(H2O) is 0 ± 0 only where every formula uses the same inputs.
        UncertainValue rest = Mass("CuSO4·5H2O") - Mass("CuSO4") - (5 * Mass("H2O"));
        Assert.Equal(0, rest.Value, 12);
        Assert.Equal(0, rest.StandardUncertainty, 12);
    }

    [Fact]
    public void Mass_fractions_add_up_to_one_without_uncertainty()
    {
        Formula hydrate = Formula.Parse("CuSO4·5H2O").Value;
        UncertainValue sum = UncertainValue.Sum(
            hydrate.Composition.Select(atoms => hydrate.MassFraction(atoms.Element, AtomicWeights.Iupac2024)));
        Assert.Equal(1, sum.Value, 14);
        Assert.Equal(0, sum.StandardUncertainty, 14);
        Assert.Equal(0, hydrate.MassFraction(Element.Of("Mg"), AtomicWeights.Iupac2024).Value);
    }

    [Fact]
    public void Magnesium_makes_up_three_fifths_of_its_oxide()
    {
        // 24.305/40.304 = 0.60304 from IUPAC's abridged values, by hand.
        UncertainValue share = Formula.Parse("MgO").Value.MassFraction(Element.Of("Mg"), AtomicWeightSets.Named("iupac-abridged"));
        Assert.Equal(0.60304, share.Value, 5);
    }

    [Fact]
    public void Heavy_water_weighs_twenty()
    {
        // 2 x 2.014102 + 15.9994, from the atomic mass of deuterium (handbook value 20.03 from memory).
        Assert.Equal(20.03, Mass("D2O").Value, 2);
    }

    [Fact]
    public void A_substance_without_a_standard_weight_has_its_fault_described()
    {
        var found = Formula.Parse("KTcO4").Value.FindMolarMass(AtomicWeights.Iupac2024);
        Assert.Equal(
            "technetium has no standard atomic weight, because its isotopes on earth have no fixed proportions",
            found.Fault!.Reason);
        Assert.Equal((1, 2), (found.Fault.Span.Start, found.Fault.Span.Length));
        Assert.Throws<InvalidOperationException>(() => Mass("KTcO4"));
    }

    [Fact]
    public void The_electron_has_no_molar_mass_of_its_own()
        => Assert.False(Formula.Parse("e-").Value.FindMolarMass(AtomicWeights.Iupac2024).Succeeded);

    private static UncertainValue Mass(string formula) => Formula.Parse(formula).Value.MolarMass(AtomicWeights.Iupac2024);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
