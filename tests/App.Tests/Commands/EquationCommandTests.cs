using System.Globalization;
using System.Text.Json;

namespace Calx.App.Tests.Commands;

public sealed class EquationCommandTests
{
    private static readonly string Reference = Path.Combine(AppContext.BaseDirectory, "reference");

    // tests/reference/equations_unique.csv: textbook coefficients, each row counted and its null space found by sympy.
    [Fact]
    public void Textbook_equations_of_a_file_get_the_textbook_coefficients()
    {
        IReadOnlyList<string[]> rows = Rows("equations_unique.csv", 2, 3);

        (Terminal run, JsonElement answers) = File([.. rows.Select(row => row[0])]);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.True(rows.Count >= 73);
        Assert.Equal(rows.Count, answers.GetArrayLength());
        foreach ((string[] row, JsonElement answer) in rows.Zip(answers.EnumerateArray()))
        {
            string coefficients = string.Join(' ', answer.GetProperty("coefficients").EnumerateArray().Select(c => c.GetInt64()));
            Assert.True(row[1] == coefficients, $"{row[0]}: {coefficients}");
            Assert.Equal("balanced", answer.GetProperty("outcome").GetString());
        }
    }

    // tests/reference/equations_impossible.csv: null space empty or of mixed signs by sympy.
    [Fact]
    public void Equations_that_cannot_balance_say_why()
    {
        IReadOnlyList<string[]> rows = Rows("equations_impossible.csv", 1);

        (Terminal run, JsonElement answers) = File([.. rows.Select(row => row[0])]);

        Assert.Equal(1, run.ExitCode);
        Assert.Equal(rows.Count, answers.GetArrayLength());
        Assert.All(answers.EnumerateArray(), answer =>
        {
            Assert.Equal("impossible", answer.GetProperty("outcome").GetString());
            Assert.Equal(JsonValueKind.Null, answer.GetProperty("coefficients").ValueKind);
            Assert.NotEmpty(answer.GetProperty("reason").GetString()!);
        });
    }

    // tests/reference/equations_nonunique.csv: null space of two dimensions or more by sympy.
    [Fact]
    public void Equations_with_many_balancings_list_the_elementary_ones()
    {
        IReadOnlyList<string[]> rows = Rows("equations_nonunique.csv", 1, 2);

        (Terminal run, JsonElement answers) = File([.. rows.Select(row => row[0])]);

        Assert.Equal(1, run.ExitCode);
        Assert.Equal(rows.Count, answers.GetArrayLength());
        foreach ((string[] row, JsonElement answer) in rows.Zip(answers.EnumerateArray()))
        {
            Assert.Equal("many", answer.GetProperty("outcome").GetString());
            Assert.Equal(JsonValueKind.Null, answer.GetProperty("coefficients").ValueKind);
            int dimension = int.Parse(row[1], CultureInfo.InvariantCulture);
            Assert.True(answer.GetProperty("others").GetArrayLength() >= dimension, row[0]);
        }
    }

    [Fact]
    public void One_equation_is_one_document()
    {
        Terminal run = Terminal.Run("equation", "Mg + O2 -> MgO", "--json");

        JsonElement answer = Schemas.Check("equation", run.Output);
        Assert.Equal(0, run.ExitCode);
        Assert.Equal([2, 1, 2], answer.GetProperty("coefficients").EnumerateArray().Select(c => c.GetInt32()));
        Assert.Equal(0, answer.GetProperty("others").GetArrayLength());
    }

    [Fact]
    public void An_unreadable_line_is_an_entry_and_is_told_with_its_line()
    {
        (Terminal run, JsonElement answers) = File("Mg + O2 -> MgO", "", "Mg + Qq -> MgO", "CaCO3 -> CaO + C");

        Assert.Equal(2, run.ExitCode);
        Assert.Equal(
            ["balanced", "unreadable", "impossible"],
            answers.EnumerateArray().Select(a => a.GetProperty("outcome").GetString()));
        Assert.StartsWith("equations.txt:3:6: ", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("Mg + O2")]
    [InlineData("")]
    [InlineData("-> ->")]
    [InlineData("Mg + Qq -> MgO")]
    public void Text_that_is_no_equation_is_bad_input(string text)
    {
        Terminal run = Terminal.Run("equation", text, "--json");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith("equation:1:", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void An_equation_and_a_file_are_not_both_taken()
    {
        Terminal run = Terminal.Run("equation", "Mg + O2 -> MgO", "--file", "equations.txt");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Equal("calx equation: give an equation or --file, not both\n", run.Error);
    }

    [Fact]
    public void A_file_that_is_not_there_is_bad_input()
    {
        Terminal run = Terminal.Run("equation", "--file", "nowhere.txt", "--json");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith("nowhere.txt:1:1: there is no such file", run.Error, StringComparison.Ordinal);
    }

    private static (Terminal Run, JsonElement Answers) File(params string[] lines)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        System.IO.File.WriteAllLines(Path.Combine(folder.FullName, "equations.txt"), lines);
        Terminal run = Terminal.RunIn(folder.FullName, "equation", "--file", "equations.txt", "--json");
        return (run, Schemas.Check("equation", run.Output));
    }

    /// <summary>Some columns of a reference file, which has no comma within the columns that are asked for.</summary>
    private static IReadOnlyList<string[]> Rows(string file, params int[] columns) =>
        [.. System.IO.File.ReadLines(Path.Combine(Reference, file))
            .Where(line => !line.StartsWith('#'))
            .Skip(1)
            .Select(line => line.Split(','))
            .Select(cells => columns.Select(column => cells[column]).ToArray())];
}
