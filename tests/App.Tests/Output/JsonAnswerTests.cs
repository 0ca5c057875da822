using System.Text.Json;
using Calx.App.Output;

namespace Calx.App.Tests.Output;

public sealed class JsonAnswerTests
{
    // Expected texts: the decimal expansions of 1/3, 2/3 e9 and 0.1 rounded by hand to 12 significant digits.
    [Theory]
    [InlineData(1.0 / 3, "0.333333333333")]
    [InlineData(2e9 / 3, "666666666.667")]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(40, "40")]
    [InlineData(-0.0, "0")]
    public void Figures_are_printed_to_twelve_significant_digits(double value, string expected)
    {
        Assert.Equal($"{{\"x\":{expected}}}", Compact(json => json.WriteFigure("x", value)));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(null)]
    public void What_is_no_number_is_null(double? value)
    {
        Assert.Equal("{\"x\":null}", Compact(json => json.WriteFigure("x", value)));
    }

    [Fact]
    public void A_document_that_fails_half_way_leaves_nothing_printed()
    {
        using var output = new StringWriter();

        Assert.Throws<InvalidDataException>(() => JsonAnswer.Print(output, json =>
        {
            json.WriteStartObject();
            throw new InvalidDataException();
        }));
        Assert.Equal("", output.ToString());
    }

    [Fact]
    public void A_formula_is_printed_with_its_dot_as_written()
    {
        Assert.Equal("{\"x\":\"CuSO4·5H2O\"}", Compact(json => json.WriteString("x", "CuSO4·5H2O")));
    }

    private static string Compact(Action<Utf8JsonWriter> member)
    {
        using var output = new StringWriter();
        JsonAnswer.Print(output, json =>
        {
            json.WriteStartObject();
            member(json);
            json.WriteEndObject();
        });
        return output.ToString().Replace(" ", "", StringComparison.Ordinal).ReplaceLineEndings("");
    }
}
