using Calx.Measurement.Expressions;
using Calx.Papers.Spreadsheets;

namespace Calx.Papers.Tests.Spreadsheets;

/// <summary>Formulas of a practical in the words of a spreadsheet. There a minus sign binds tighter than a power and powers group from the
/// left (OpenFormula 1.2, 5.5; ECMA-376 part 1, 18.17.2.2), in a practical's file it is the other way about.</summary>
public sealed class FormulaTextTests
{
    [Theory]
    [InlineData("a - b - c", "A1-B1-C1")]
    [InlineData("a - (b - c)", "A1-(B1-C1)")]
    [InlineData("a / b / c", "A1/B1/C1")]
    [InlineData("a / (b * c)", "A1/(B1*C1)")]
    [InlineData("100 * (a - b) / c", "100*(A1-B1)/C1")]
    [InlineData("-a^2", "(-POWER(A1,2))")]
    [InlineData("a^b^2", "POWER(A1,POWER(B1,2))")]
    [InlineData("a - -b", "A1-(-B1)")]
    [InlineData("a / M(H2O)", "A1/M_H2O")]
    [InlineData("max(ln(a), sqrt(abs(b)), 0.5)", "MAX(LN(A1),SQRT(ABS(B1)),0.5)")]
    public void A_formula_keeps_its_meaning(string formula, string expected) =>
        Assert.Equal(expected, new FormulaText(name => $"{name.ToUpperInvariant()}1", new ConstantNames(["H2O"]).Of).Of(Expression.Parse(formula).Value!));

    [Fact]
    public void Names_differ_in_more_than_capitals_and_have_signs_that_every_spreadsheet_takes()
    {
        var names = new ConstantNames(["CO", "Co", "CuSO4.5H2O", "Ca(OH)2", "CuSO4·5H2O"]);
        Assert.Equal(["M_CO", "M_Co__2", "M_CuSO4_5H2O", "M_Ca_OH_2", "M_CuSO4_5H2O__2"], names.Formulas.Select(names.Of));
    }
}
