using System.Text.Json;

namespace Calx.App.Tests.Commands;

public sealed class FormulaCommandTests
{
    // tests/reference/molar_masses_computed.csv: intervals of the IUPAC 2021 table as rectangular, worked out apart
    // from this program.
    [Theory]
    [InlineData("MgO", 40.304900, 0.000892)]
    [InlineData("CuSO4·5H2O", 249.687850, 0.005602)]
    [InlineData("CuSO4.5H2O", 249.687850, 0.005602)]
    [InlineData("CuSO4*5H2O", 249.687850, 0.005602)]
    public void Molar_mass_agrees_with_the_IUPAC_table(string formula, double value, double uncertainty)
    {
        JsonElement answer = Json(formula);

        JsonElement mass = answer.GetProperty("molarMass");
        Assert.Equal(value, mass.GetProperty("value").GetDouble(), 6);
        Assert.Equal(uncertainty, mass.GetProperty("standardUncertainty").GetDouble(), 6);
        Assert.Equal("g/mol", mass.GetProperty("unit").GetString());
    }

    // CRC Handbook, from memory: CuSO4·5H2O is 25.45 % copper. Hydrogen: 10 × 1.008 / 249.68.
    [Theory]
    [InlineData("Cu", 1, 0.2545)]
    [InlineData("H", 10, 0.0404)]
    [InlineData("O", 9, 0.5767)]
    public void The_water_of_a_hydrate_counts_among_its_elements(string symbol, int count, double share)
    {
        JsonElement answer = Json("CuSO4·5H2O");

        JsonElement element = Assert.Single(
            answer.GetProperty("elements").EnumerateArray(), e => e.GetProperty("symbol").GetString() == symbol);
        Assert.Equal(count, element.GetProperty("count").GetInt32());
        Assert.Equal(share, element.GetProperty("massFraction").GetDouble(), 4);
    }

    [Fact]
    public void A_hydrate_is_named_with_a_middle_dot_however_it_was_typed()
    {
        Assert.Equal("CuSO4·5H2O", Json("CuSO4.5H2O").GetProperty("formula").GetString());
    }

    [Fact]
    public void An_element_without_a_standard_atomic_weight_has_no_molar_mass_and_a_reason()
    {
        // CIAAW gives none for technetium.
        Terminal run = Terminal.Run("formula", "TcO2", "--json");

        JsonElement mass = Schemas.Check("formula", run.Output).GetProperty("molarMass");
        Assert.Equal(1, run.ExitCode);
        Assert.Equal(JsonValueKind.Null, mass.GetProperty("value").ValueKind);
        Assert.Contains("technetium", mass.GetProperty("reason").GetString()!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Xq", "formula:1:1: ")]
    [InlineData("Mg(OH", "formula:1:")]
    [InlineData("", "formula:1:1: ")]
    [InlineData("H2O)", "formula:1:4: ")]
    public void A_formula_that_cannot_be_read_is_one_line_with_its_place(string formula, string start)
    {
        Terminal run = Terminal.Run("formula", formula, "--json");

        Assert.Equal(2, run.ExitCode);
        Assert.Equal("", run.Output);
        Assert.StartsWith(start, run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void No_formula_at_all_is_asked_for()
    {
        Terminal run = Terminal.Run("formula");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith("calx formula: which formula?", run.Error, StringComparison.Ordinal);
    }

    private static JsonElement Json(string formula)
    {
        Terminal run = Terminal.Run("formula", formula, "--json");
        Assert.Equal("", run.Error);
        Assert.Equal(0, run.ExitCode);
        return Schemas.Check("formula", run.Output);
    }
}
