using Calx.App.Output;

namespace Calx.App.Tests.Output;

/// <summary>JCGM 100:2008, 7.2.6: an uncertainty to at most two significant digits, the estimate in the same decimals.
/// </summary>
public sealed class FigureTests
{
    // The mass of the clause's own example, m = 100,021 47 g with u = 0,35 mg (7.2.2), and roundings done by hand.
    [Theory]
    [InlineData(100.02147, 0.00035, "100.02147 ± 0.00035")]
    [InlineData(1.6, 0.0996, "1.60 ± 0.10")]
    [InlineData(1234.5678, 12.3, "1235 ± 12")]
    [InlineData(40.3044, 0.00196, "40.3044 ± 0.0020")]
    [InlineData(2, 0, "2")]
    public void Value_and_uncertainty_share_their_decimals(double value, double uncertainty, string expected)
    {
        Assert.Equal(expected, Figure.WithUncertainty(value, uncertainty));
    }

    [Fact]
    public void Very_small_and_very_large_numbers_stay_readable()
    {
        Assert.Equal("1.38065E-23 ± 1.2E-28", Figure.WithUncertainty(1.38065e-23, 1.2e-28));
        Assert.Equal("6.02214E+23 ± 1.8E+16", Figure.WithUncertainty(6.02214e23, 1.8e16));
    }
}
