using Calx.Practicals.Marking.Written;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>Numbers as people write them. The forms are common practice, no source.</summary>
public class AnswerTextTests
{
    [Theory]
    [InlineData("0.24", 0.24, 0.005, 2, 2, "")]
    [InlineData("0,24", 0.24, 0.005, 2, 2, "")]
    [InlineData("0.240", 0.24, 0.0005, 3, 3, "")]
    [InlineData("-0.14", -0.14, 0.005, 2, 2, "")]
    [InlineData("−0.14", -0.14, 0.005, 2, 2, "")]
    [InlineData(".5", 0.5, 0.05, 1, 1, "")]
    [InlineData("24 %", 24, 0.5, 2, 0, "%")]
    [InlineData("36.8%", 36.8, 0.05, 3, 1, "%")]
    [InlineData("0.24g", 0.24, 0.005, 2, 2, "g")]
    [InlineData("0.24 g", 0.24, 0.005, 2, 2, "g")]
    [InlineData("0.0099 mol", 0.0099, 0.00005, 2, 4, "mol")]
    [InlineData("9.9e-3", 0.0099, 0.00005, 2, null, "")]
    [InlineData("9.9 x 10^-3", 0.0099, 0.00005, 2, null, "")]
    [InlineData("9.9 × 10⁻³ mol", 0.0099, 0.00005, 2, null, "mol")]
    [InlineData("9.88*10^-3", 0.00988, 0.000005, 3, null, "")]
    [InlineData("1.5 x 10^2", 150, 5, 2, null, "")]
    [InlineData("4.4 kJ/mol", 4.4, 0.05, 2, 1, "kJ/mol")]
    public void A_decimal_number_is_read_with_its_rounding_and_unit(string text, double value, double half, int figures, int? decimals, string unit)
    {
        var number = Assert.IsType<AnswerText.Number>(AnswerText.Read(text));
        Assert.Equal(value, number.Value, Math.Abs(value) * 1e-12);
        Assert.Equal(half, number.HalfWidth, half * 1e-9);
        Assert.Equal((figures, decimals, unit, AnswerForm.Decimal), (number.Figures, number.Decimals, number.Unit, number.Form));
    }

    [Theory]
    [InlineData("1.1:1", 1.1, 0.05, 2)]
    [InlineData("1.13 : 1", 1.13, 0.005, 3)]
    [InlineData("1 : 1.13", 1 / 1.13, 0.005 / (1.13 * 1.13), 3)]
    [InlineData("1:1", 1, 0.5, 1)]
    [InlineData("1.0 : 1.0", 1, 0.1, 2)]
    [InlineData("2 to 1", 2, 0.5, 1)]
    [InlineData("0.00988:0.00875", 1.12914286, 0.00121, 3)]
    public void A_ratio_is_what_there_is_for_each_of_its_right_side(string text, double value, double half, int figures)
    {
        var number = Assert.IsType<AnswerText.Number>(AnswerText.Read(text));
        Assert.Equal(value, number.Value, 1e-6);
        Assert.Equal(half, number.HalfWidth, half * 0.02);
        Assert.Equal((figures, AnswerForm.Ratio), (number.Figures, number.Form));
    }

    [Theory]
    [InlineData("7/8", 0.875)]
    [InlineData("0.24/24.3", 0.24 / 24.3)]
    [InlineData("1 / 3 mol", 1.0 / 3)]
    public void A_fraction_is_exact(string text, double value)
    {
        var number = Assert.IsType<AnswerText.Number>(AnswerText.Read(text));
        Assert.Equal((value, 0.0, AnswerForm.Fraction), (number.Value, number.HalfWidth, number.Form));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("-")]
    [InlineData("–")]
    [InlineData(null)]
    public void Nothing_is_nothing(string? text) => Assert.IsType<AnswerText.Nothing>(AnswerText.Read(text));

    [Theory]
    [InlineData("about half")]
    [InlineData("0.24.1")]
    [InlineData("MgO")]
    [InlineData("5/0")]
    [InlineData("1:0")]
    [InlineData("1e400")]
    [InlineData("1e-400")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("The mass went up because the magnesium took in oxygen from the air and so on and on")]
    public void What_is_no_number_is_said_to_be_none(string text) =>
        Assert.NotEmpty(Assert.IsType<AnswerText.Unreadable>(AnswerText.Read(text)).Reason);

    [Fact]
    public void No_text_is_too_long_or_too_odd_to_be_answered()
    {
        foreach (string text in new[] { new string('9', 100_000), new string(' ', 5000), "1" + new string('0', 59), string.Concat(Enumerable.Repeat("1:", 30)), "\uD83D" })
        {
            Assert.NotNull(AnswerText.Read(text));
        }
    }
}
