using Calx.Measurement.Numbers;

namespace Calx.Engine.Tests.Measurement.Numbers;

public class WrittenNumberTests
{
    [Theory]
    [InlineData("15.10", 2)]
    [InlineData("-0.03", 2)]
    [InlineData("42", 0)]
    [InlineData(".5", 1)]
    [InlineData("30.", 0)]
    public void Keeps_the_decimals_that_were_written(string text, int decimals)
    {
        Assert.True(WrittenNumber.TryParse(text, out WrittenNumber number));
        Assert.Equal(decimals, number.Decimals);
    }

    [Fact]
    public void A_trailing_zero_makes_another_reading()
    {
        Assert.NotEqual(new WrittenNumber(15.10m), new WrittenNumber(15.1m));
        Assert.Equal("15.10", new WrittenNumber(15.10m).ToString());
    }

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData("1e400")]
    [InlineData("NaN")]
    [InlineData("1,234.5")]
    [InlineData("12.3 g")]
    [InlineData("0.00000000000000000000000000000001")]
    [InlineData("123456789012345678901234567890123456789")]
    public void Declines_what_no_balance_shows(string text) => Assert.False(WrittenNumber.TryParse(text, out _));
}
