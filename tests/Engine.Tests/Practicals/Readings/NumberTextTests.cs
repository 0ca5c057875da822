using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

public class NumberTextTests
{
    [Theory]
    [InlineData("24.31", "24.31")]
    [InlineData("24.310", "24.310")]
    [InlineData("24,31", "24.31")]
    [InlineData("24,310", "24.310")]
    [InlineData("24·31", "24.31")]
    [InlineData("0,24", "0.24")]
    [InlineData("24.31 g", "24.31")]
    [InlineData("24.31g", "24.31")]
    [InlineData("24.31 G", "24.31")]
    [InlineData("24,31 grams", "24.31")]
    [InlineData("\u00a024.31\u00a0g\u200b", "24.31")]
    [InlineData("\ufeff24.31", "24.31")]
    [InlineData("+24.31", "24.31")]
    [InlineData("24310 mg", "24.310")]
    [InlineData("24310.5 mg", "24.3105")]
    [InlineData("0.02431 kg", "24.31")]
    [InlineData("0.024310 kg", "24.310")]
    [InlineData("2 kg", "2000")]
    [InlineData(".5", "0.5")]
    [InlineData("30", "30")]
    [InlineData("-0.00", "0.00")]
    public void A_mass_is_read_as_written(string text, string grams)
    {
        NumberCell.Number number = Assert.IsType<NumberCell.Number>(NumberText.Read(text, new NumberExpectation()));
        Assert.Equal(grams, number.Value.ToString());
    }

    [Theory]
    [InlineData("24.31", "0.01")]
    [InlineData("24310 mg", "0.001")]
    [InlineData("0.02431 kg", "0.01")]
    [InlineData("2 kg", "1000")]
    [InlineData("30", "1")]
    public void The_last_digit_is_worth_what_was_read(string text, string grams)
    {
        NumberCell.Number number = Assert.IsType<NumberCell.Number>(NumberText.Read(text, new NumberExpectation()));
        Assert.Equal(decimal.Parse(grams, System.Globalization.CultureInfo.InvariantCulture), number.LastDigit);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("-")]
    [InlineData("–")]
    [InlineData("—")]
    [InlineData(" --- ")]
    public void A_blank_or_a_dash_is_no_reading(string text) =>
        Assert.IsType<NumberCell.NoReading>(NumberText.Read(text, new NumberExpectation()));

    [Theory]
    [InlineData("-24.31", "negative")]
    [InlineData("−24.31", "negative")]
    [InlineData("NaN", "not a number")]
    [InlineData("Infinity", "not a number")]
    [InlineData("1e400", "power of ten")]
    [InlineData("2.431E+1", "power of ten")]
    [InlineData("2.431 x 10^1", "power of ten")]
    [InlineData("spilt", "not a number")]
    [InlineData("n/a", "not a number")]
    [InlineData("24.31 (lid off)", "behind the number")]
    [InlineData("24.31?", "behind the number")]
    [InlineData("24.31*", "behind the number")]
    [InlineData("~24.31", "not a number")]
    [InlineData("24.31 ml", "not the unit")]
    [InlineData("24.3 %", "not the unit")]
    [InlineData("24.3.1", "more than one")]
    [InlineData("1,234.5", "more than one")]
    [InlineData("24 .31", "behind the number")]
    [InlineData("1 234,5", "space inside")]
    [InlineData("#DIV/0!", "error of the spreadsheet")]
    [InlineData("0.1600000000000001", "12 digits")]
    [InlineData("999999", "more than any")]
    [InlineData(".", "not a number")]
    [InlineData("g", "not a number")]
    [InlineData("=1+1", "not a number")]
    public void What_is_no_reading_is_rejected_with_its_reason(string text, string reason)
    {
        NumberCell.Rejected rejected = Assert.IsType<NumberCell.Rejected>(NumberText.Read(text, new NumberExpectation()));
        Assert.Contains(reason, rejected.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_as_long_as_a_letter_is_rejected() =>
        Assert.IsType<NumberCell.Rejected>(NumberText.Read(new string('1', 100_000), new NumberExpectation()));

    [Fact]
    public void A_comma_before_three_digits_may_mark_thousands_where_there_are_points()
    {
        NumberExpectation points = new(pointsAround: true);
        Assert.IsType<NumberCell.Rejected>(NumberText.Read("24,310", points));
        Assert.IsType<NumberCell.Number>(NumberText.Read("24,31", points));
        Assert.IsType<NumberCell.Number>(NumberText.Read("0,240", points));
    }

    [Fact]
    public void The_unit_of_the_heading_is_taken_and_that_of_the_cell_goes_before_it()
    {
        NumberExpectation milligrams = new(writtenUnit: "mg");
        Assert.Equal("0.240", ((NumberCell.Number)NumberText.Read("240", milligrams)).Value.ToString());
        Assert.Equal("0.24", ((NumberCell.Number)NumberText.Read("0.24 g", milligrams)).Value.ToString());
    }

    [Fact]
    public void A_change_of_mass_may_be_negative()
    {
        NumberCell number = NumberText.Read("−0.03 g", new NumberExpectation(mayBeNegative: true));
        Assert.Equal("-0.03", ((NumberCell.Number)number).Value.ToString());
    }
}
