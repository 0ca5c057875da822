using Xunit.Sdk;

namespace Calx.App.Tests;

/// <summary>The schemas themselves: that they let a right document through, and not one with a slip.</summary>
public sealed class SchemasTests
{
    private const string Right = """
        {"outcome":"balanced","balanced":"2Mg + O₂ → 2MgO","coefficients":[2,1,2],"others":[],"reason":null}
        """;

    [Fact]
    public void A_right_document_passes_alone_and_in_a_list()
    {
        Assert.Equal("balanced", Schemas.Check("equation", Right).GetProperty("outcome").GetString());
        Assert.Equal(2, Schemas.Check("equation", $"[{Right},{Right}]").GetArrayLength());
    }

    [Theory]
    [InlineData("balanced\",\"balanced", "perhaps\",\"balanced")]
    [InlineData("[2,1,2]", "[2,1,2.5]")]
    [InlineData("[2,1,2]", "\"2,1,2\"")]
    [InlineData(",\"reason\":null", "")]
    [InlineData("\"reason\"", "\"because\"")]
    public void A_document_with_a_slip_does_not(string from, string to)
    {
        string wrong = Right.Replace(from, to, StringComparison.Ordinal);

        Assert.NotEqual(Right, wrong);
        Assert.Throws<TrueException>(() => Schemas.Check("equation", wrong));
    }
}
