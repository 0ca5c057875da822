using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;

namespace Calx.Engine.Tests.Chemistry.Formulas;

// The compositions are counted by hand from the formulas; the spellings are common practice, no source.
public sealed class FormulaReadingTests
{
    [Theory]
    [InlineData("MgO", "Mg1 O1")]
    [InlineData("Co", "Co1")]
    [InlineData("CO", "C1 O1")]
    [InlineData("Ca3(PO4)2", "Ca3 P2 O8")]
    [InlineData("K4[Fe(CN)6]", "K4 Fe1 C6 N6")]
    [InlineData("[Cr(N2H4CO)6]4[Cr(CN)6]3", "Cr7 N66 H96 C42 O24")]
    [InlineData("{[(OH)2]2}2H", "O8 H9")]
    [InlineData("CH3COOH", "C2 H4 O2")]
    [InlineData("CuSO4.5H2O", "Cu1 S1 O9 H10")]
    [InlineData("CuSO4·5H2O", "Cu1 S1 O9 H10")]
    [InlineData("CuSO4*5H2O", "Cu1 S1 O9 H10")]
    [InlineData("CuSO4 • 5 H2O", null)]
    [InlineData("CuSO4 • 5H2O", "Cu1 S1 O9 H10")]
    [InlineData("CuSO₄⋅5H₂O", "Cu1 S1 O9 H10")]
    [InlineData("(CaSO4)2.H2O", "Ca2 S2 O9 H2")]
    [InlineData("KAl(SO4)2.12H2O", "K1 Al1 S2 O20 H24")]
    [InlineData("2CaSO4.H2O", null)]
    [InlineData("MgSO4.K2SO4.6H2O", "Mg1 S2 O14 K2 H12")]
    [InlineData("D2O", "D2 O1")]
    [InlineData("HTO", "H1 T1 O1")]
    [InlineData("DyTi", "Dy1 Ti1")]
    [InlineData("C₁₂H₂₂O₁₁", "C12 H22 O11")]
    [InlineData("  MgO  ", "Mg1 O1")]
    [InlineData("e-", "")]
    public void A_formula_is_counted(string text, string? composition)
    {
        Parsed<Formula> read = Formula.Parse(text);
        Assert.Equal(composition is not null, read.Succeeded);
        if (read.Succeeded)
        {
            Assert.Equal(composition, string.Join(' ', read.Value.Composition.Select(a => $"{a.Element}{a.Count}")));
        }
    }

    [Theory]
    [InlineData("SO4^2-", -2, "SO4^2-")]
    [InlineData("SO₄²⁻", -2, "SO4^2-")]
    [InlineData("SO4^{2-}", -2, "SO4^2-")]
    [InlineData("SO4^-2", -2, "SO4^2-")]
    [InlineData("SO4--", -2, "SO4^2-")]
    [InlineData("SO4 2-", -2, "SO4^2-")]
    [InlineData("SO4 2−", -2, "SO4^2-")]
    [InlineData("Fe^3+", 3, "Fe^3+")]
    [InlineData("Fe³⁺", 3, "Fe^3+")]
    [InlineData("Fe^+3", 3, "Fe^3+")]
    [InlineData("Fe 3+", 3, "Fe^3+")]
    [InlineData("Hg2^2+", 2, "Hg2^2+")]
    [InlineData("Hg₂²⁺", 2, "Hg2^2+")]
    [InlineData("Na+", 1, "Na^+")]
    [InlineData("Cl⁻", -1, "Cl^-")]
    [InlineData("NH4+", 1, "NH4^+")]
    [InlineData("NO3-", -1, "NO3^-")]
    [InlineData("I₃-", -1, "I3^-")]
    [InlineData("[Fe(CN)6]4-", -4, null)]
    [InlineData("[Fe(CN)6]^4-", -4, "[Fe(CN)6]^4-")]
    [InlineData("[Cu(H2O)6]2+", 2, null)]
    [InlineData("e-", -1, "e^-")]
    [InlineData("e⁻", -1, "e^-")]
    [InlineData("e^-", -1, "e^-")]
    [InlineData("Na+(aq)", 1, "Na^+(aq)")]
    [InlineData("MgSO4.7H2O(s)", 0, "MgSO4·7H2O(s)")]
    public void A_charge_is_read_in_its_spellings(string text, int charge, string? plain)
    {
        Parsed<Formula> read = Formula.Parse(text);
        Assert.Equal(plain, read.Succeeded ? read.Value.ToString() : null);
        if (read.Succeeded)
        {
            Assert.Equal(charge, read.Value.Charge);
        }
    }

    [Theory]
    [InlineData("Mg(s)", MatterState.Solid)]
    [InlineData("H2O(l)", MatterState.Liquid)]
    [InlineData("O2 (g)", MatterState.Gas)]
    [InlineData("HCl(aq)", MatterState.Aqueous)]
    [InlineData("MgO", MatterState.NotSaid)]
    public void A_state_is_read(string text, MatterState state) => Assert.Equal(state, Formula.Parse(text).Value.State);

    [Theory]
    [InlineData("Xq", 0, 2, "there is no element Xq", null)]
    [InlineData("mgo", 0, 1, "an element's symbol begins with a capital letter", "MgO")]
    [InlineData("NACL", 1, 1, "there is no element A", "NaCl")]
    [InlineData("Cuso4", 2, 1, "an element's symbol begins with a capital letter", "CuSO4")]
    [InlineData("co2", 0, 1, "an element's symbol begins with a capital letter", "CO2")]
    [InlineData("cocl2", 0, 1, "an element's symbol begins with a capital letter", "COCl2")]
    [InlineData("MgO2)", 4, 1, "this bracket was not opened", null)]
    [InlineData("Mg(OH", 2, 1, "this ( is not closed by )", null)]
    [InlineData("Mg(OH]2", 5, 1, "] cannot close (: ) was expected", null)]
    [InlineData("Mg()2", 2, 2, "nothing stands between these brackets", null)]
    [InlineData("C02", 1, 2, "a number of atoms does not begin with 0", "CO2")]
    [InlineData("", 0, 0, "a formula is missing here", null)]
    [InlineData("Fe3+", 2, 2, "this can be read in two ways; write the charge behind ^", "Fe^3+")]
    [InlineData("SO42-", 2, 3, "this can be read in two ways; write the charge behind ^", "SO4^2-")]
    [InlineData("2MgO", 0, 1, "a number before a formula is a coefficient and belongs to an equation", "MgO")]
    [InlineData("SO4^2", 3, 2, "a charge needs its sign, as in Fe^3+ or SO4^2-", null)]
    [InlineData("Fe+3", 2, 2, "a charge is written with the number first, behind ^", null)]
    [InlineData("e", 0, 1, "e is the electron only with its charge, e-", "e^-")]
    [InlineData("CuSO4.", 6, 0, "after the dot a formula must follow, as in CuSO4·5H2O", null)]
    [InlineData("CuSO4.xH2O", 6, 1, "the amount of water must be a number, as in CuSO4·5H2O", null)]
    [InlineData("Na(aq)+", 6, 1, "the charge stands before the state, as in Na^+(aq)", null)]
    [InlineData("²H2O", 0, 2, "isotopes are read only for hydrogen, written D or T", null)]
    [InlineData("Mg O", 3, 1, "a formula is written without spaces", null)]
    [InlineData("(CuSO4.5H2O)2", 6, 1, "a dot before water of crystallisation cannot stand inside brackets", null)]
    [InlineData("CuSO4 5H2O", 6, 1, "a formula is written without spaces", "CuSO4·5H2O")]
    [InlineData("CuSO4,5H2O", 5, 1, ", has no place here in a formula", "CuSO4·5H2O")]
    [InlineData("Mg&O", 2, 1, "& has no place here in a formula", null)]
    public void A_fault_says_where_and_what(string text, int start, int length, string reason, string? suggestion)
    {
        TextFault? fault = Formula.Parse(text).Fault;
        Assert.NotNull(fault);
        Assert.Equal(reason, fault.Reason);
        Assert.Equal(new SourceSpan(start, length), fault.Span);
        Assert.Equal(suggestion, fault.Suggestion);
    }

    [Theory]
    [InlineData("Fe0.95O")]
    [InlineData("Fe0,95O")]
    [InlineData("Fe1.5O")]
    public void A_substance_of_variable_composition_is_declined_with_its_reason(string text)
        => Assert.StartsWith("numbers of atoms are whole here", Formula.Parse(text).Fault!.Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData("CaSO4.0.5H2O")]
    [InlineData("CaSO4·½H2O")]
    [InlineData("CaSO4·1.5H2O")]
    public void A_broken_amount_of_water_is_declined_with_its_reason(string text)
        => Assert.Equal(
            "the amount of water is a whole number here; multiply the whole formula", Formula.Parse(text).Fault!.Reason);
}
