using Calx.Chemistry.Formulas;

namespace Calx.Engine.Tests.Chemistry.Formulas;

// How formulas are set: IUPAC Red Book 2005, IR-4, from memory.
public sealed class FormulaDisplayTests
{
    [Theory]
    [InlineData("MgO", "MgO", "MgO")]
    [InlineData("CuSO4.5H2O", "CuSO₄·5H₂O", "CuSO<sub>4</sub>·5H<sub>2</sub>O")]
    [InlineData("KAl(SO4)2.12H2O", "KAl(SO₄)₂·12H₂O", "KAl(SO<sub>4</sub>)<sub>2</sub>·12H<sub>2</sub>O")]
    [InlineData("SO4^2-(aq)", "SO₄²⁻(aq)", "SO<sub>4</sub><sup>2−</sup>(aq)")]
    [InlineData("Na+", "Na⁺", "Na<sup>+</sup>")]
    [InlineData("C12H22O11", "C₁₂H₂₂O₁₁", "C<sub>12</sub>H<sub>22</sub>O<sub>11</sub>")]
    [InlineData("K4[Fe(CN)6]", "K₄[Fe(CN)₆]", "K<sub>4</sub>[Fe(CN)<sub>6</sub>]")]
    [InlineData("e-", "e⁻", "e<sup>−</sup>")]
    [InlineData("H1", "H", "H")]
    [InlineData("(CaSO4)2.H2O", "(CaSO₄)₂·H₂O", "(CaSO<sub>4</sub>)<sub>2</sub>·H<sub>2</sub>O")]
    public void A_formula_is_shown_in_Unicode_and_in_HTML(string text, string unicode, string html)
    {
        Formula formula = Formula.Parse(text).Value;
        Assert.Equal(unicode, formula.ToUnicode());
        Assert.Equal(html, formula.ToHtml());
    }

    [Fact]
    public void Pieces_say_where_each_run_stands() => Assert.Equal(
        [
            new FormulaPiece("SO", FormulaLine.Base),
            new FormulaPiece("4", FormulaLine.Subscript),
            new FormulaPiece("2−", FormulaLine.Superscript),
            new FormulaPiece("(aq)", FormulaLine.Base),
        ],
        Formula.Parse("SO4^2-(aq)").Value.Pieces);
}
