using Calx.Chemistry.Equations;
using Calx.Measurement.Numbers;

namespace Calx.Engine.Tests.Chemistry.Equations;

// Spellings are common practice, no source.
public sealed class EquationReadingTests
{
    [Theory]
    [InlineData("Mg + O2 -> MgO", "Mg + O2 -> MgO")]
    [InlineData("Mg+O2->MgO", "Mg + O2 -> MgO")]
    [InlineData("Mg +O2 → MgO", "Mg + O2 -> MgO")]
    [InlineData("Mg+ O2 = MgO", "Mg + O2 -> MgO")]
    [InlineData("2Mg + 1O2 --> 2 MgO", "2Mg + O2 -> 2MgO")]
    [InlineData("N2 + 3H2 ⇌ 2NH3", "N2 + 3H2 <=> 2NH3")]
    [InlineData("N2 + H2 <--> NH3", "N2 + H2 <=> NH3")]
    [InlineData("Fe^3+ + e- -> Fe^2+", "Fe^3+ + e^- -> Fe^2+")]
    [InlineData("Fe^3+ + e--> Fe^2+", "Fe^3+ + e^- -> Fe^2+")]
    [InlineData("Fe^3++e-->Fe^2+", "Fe^3+ + e^- -> Fe^2+")]
    [InlineData("Fe³⁺+e⁻→Fe²⁺", "Fe^3+ + e^- -> Fe^2+")]
    [InlineData("Ag+ + Cl- -> AgCl", "Ag^+ + Cl^- -> AgCl")]
    [InlineData("Ag++Cl- -> AgCl", "Ag^+ + Cl^- -> AgCl")]
    [InlineData("Ag+(aq) + Cl-(aq) -> AgCl(s)", "Ag^+(aq) + Cl^-(aq) -> AgCl(s)")]
    [InlineData("Ca++ + CO3-- = CaCO3", "Ca^2+ + CO3^2- -> CaCO3")]
    [InlineData("CuO+(NH4)2SO4 -> Cu", "CuO + (NH4)2SO4 -> Cu")]
    [InlineData("Zn + Cu 2+ -> Zn 2+ + Cu", "Zn + Cu^2+ -> Zn^2+ + Cu")]
    [InlineData("Zn + Cu^+2 -> Zn^{2+} + Cu", "Zn + Cu^2+ -> Zn^2+ + Cu")]
    [InlineData("2H^+ + 2e^- <=> H2", "2H^+ + 2e^- <=> H2")]
    [InlineData("MgSO4.7H2O -> MgSO4 + 7H2O", "MgSO4·7H2O -> MgSO4 + 7H2O")]
    public void An_equation_is_read_in_its_spellings(string text, string plain)
    {
        Parsed<Equation> read = Equation.Parse(text);
        Assert.Equal(plain, read.Succeeded ? read.Value.ToString() : read.Fault.ToString());
    }

    [Theory]
    [InlineData("", 0, 0, "an equation is missing here")]
    [InlineData("Mg + O2", 0, 7, "an arrow is missing: write -> between the two sides")]
    [InlineData("Mg -> MgO -> Mg", 10, 2, "an equation has one arrow")]
    [InlineData("Mg + -> MgO", 5, 0, "a formula is missing here")]
    [InlineData("-> MgO", 0, 0, "a formula is missing here")]
    [InlineData("Mg + + O2 -> MgO", 5, 0, "a formula is missing here")]
    [InlineData("Mg + Xq -> MgO", 5, 2, "there is no element Xq")]
    [InlineData("Mg + ½O2 -> MgO", 5, 1, "coefficients are whole numbers here; multiply the whole equation")]
    [InlineData("Mg + 0.5O2 -> MgO", 5, 1, "coefficients are whole numbers here; multiply the whole equation")]
    [InlineData("Mg + 1/2 O2 -> MgO", 5, 1, "coefficients are whole numbers here; multiply the whole equation")]
    [InlineData("0Mg + O2 -> MgO", 0, 1, "a coefficient does not begin with 0")]
    [InlineData("123456789Mg -> Mg", 0, 9, "a coefficient has at most 8 digits")]
    [InlineData("Fe3+ + e- -> Fe2+", 2, 2, "this can be read in two ways; write the charge behind ^")]
    public void A_fault_says_where_and_what(string text, int start, int length, string reason)
    {
        TextFault? fault = Equation.Parse(text).Fault;
        Assert.Equal((start, length, reason), (fault?.Span.Start ?? -1, fault?.Span.Length ?? -1, fault?.Reason));
    }

    [Fact]
    public void Small_letters_in_an_equation_are_met_with_a_guess()
        => Assert.Equal("MgO", Equation.Parse("2Mg + O2 -> 2mgo").Fault!.Suggestion);

    [Fact]
    public void Each_size_has_an_end()
    {
        string many = string.Join(" + ", Enumerable.Repeat("H2", 40));
        Assert.Equal("an equation has at most 40 species", Equation.Parse($"{many} -> H2").Fault!.Reason);
        Assert.Equal("an equation has at most 2000 characters", Equation.Parse(new string(' ', 2001)).Fault!.Reason);
        string elements = string.Join(" + ", Calx.Chemistry.Elements.Element.All.Chunk(4).Select(four => string.Concat<object>(four)));
        Assert.Equal("an equation has at most 40 elements", Equation.Parse($"{elements} -> H2").Fault!.Reason);
    }

    [Fact]
    public void An_equation_is_shown_in_Unicode_and_in_HTML()
    {
        Equation equation = Equation.Parse("Fe^3+ + SO4^2- <=> X2".Replace("X2", "Fe2(SO4)3", StringComparison.Ordinal)).Value;
        Assert.Equal("2Fe³⁺ + 3SO₄²⁻ ⇌ Fe₂(SO₄)₃", equation.ToUnicode([2, 3, 1]));
        Assert.Equal(
            "2Mg + O<sub>2</sub> → 2MgO", Equation.Parse("Mg + O2 -> MgO").Value.ToHtml([2, 1, 2]));
        Assert.Throws<ArgumentException>(() => equation.ToUnicode([1]));
    }
}
