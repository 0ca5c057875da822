using Calx.Measurement.Numbers;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Numbers;

public class FiguresTests
{
    // JCGM 100:2008, 7.2.6: at most two significant figures of the uncertainty, the value rounded to match.
    [Theory]
    [InlineData(0.1123, 2)]
    [InlineData(0.29, 2)]
    [InlineData(0.31, 1)]
    [InlineData(0.0523, 2)]
    [InlineData(31.7, 0)]
    [InlineData(4.2, 0)]
    [InlineData(0.000_000_01, 9)]
    [InlineData(0, 0)]
    public void Decimals_follow_the_uncertainty(double uncertainty, int decimals) =>
        Assert.Equal(decimals, Figures.DecimalsFor(uncertainty));

    [Fact]
    public void A_negative_value_has_a_true_minus_sign_and_zero_has_none()
    {
        Assert.Equal("−0.16", Figures.Text(-0.158, 2));
        Assert.Equal("0.00", Figures.Text(-0.001, 2));
    }

    [Fact]
    public void The_shown_value_is_within_half_a_unit_of_its_last_decimal() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Int[0, Figures.MostDecimals]).Always((value, decimals) =>
        {
            double shown = double.Parse(
                Figures.Text(value, decimals).Replace('−', '-'), System.Globalization.CultureInfo.InvariantCulture);
            Assert.InRange(Math.Abs(shown - value), 0, (0.5 * Math.Pow(10, -decimals)) + Math.BitIncrement(Math.Abs(value)) - Math.Abs(value));
        });
}
