using System.Text.Json;

namespace Calx.App.Tests.Commands;

/// <summary>What is wrong with a whole file ends in one line and exit code 2; what is wrong with a cell is named, and the
/// rest is used.</summary>
public sealed class AnalyseBadInputTests
{
    private const string Magnesium = "magnesium-oxide";
    private const string Headings = "Group,empty,before,after\n";

    [Theory]
    [InlineData("", "empty")]
    [InlineData("\n\n  \n", "")]
    [InlineData("Group,before,before\nA,30.24,30.25\n", "stands over two columns")]
    [InlineData("Group,colour,smell\nA,white,none\n", "")]
    [InlineData("30.24,30.38\n", "")]
    public void A_file_without_a_readable_table_is_one_line(string csv, string word)
    {
        AssertFault(ClassInput.Run(Magnesium, csv, "--json"), word);
    }

    [Fact]
    public void A_binary_file_is_one_line()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        byte[] bytes = new byte[5000];
        new Random(7).NextBytes(bytes);
        File.WriteAllBytes(Path.Combine(folder.FullName, "class.csv"), bytes);

        AssertFault(Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", Magnesium, "--json"), "");
    }

    [Fact]
    public void A_folder_is_one_line()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Directory.CreateDirectory(Path.Combine(folder.FullName, "class.csv"));

        AssertFault(Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", Magnesium), "folder");
    }

    [Fact]
    public void A_file_that_is_not_there_is_one_line()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();

        AssertFault(Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", Magnesium), "no ");
    }

    [Theory]
    [InlineData("class.csv")]
    [InlineData("class.xlsx")]
    public void A_file_of_200_megabytes_is_refused_unread(string name)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        using (FileStream file = File.Create(Path.Combine(folder.FullName, name)))
        {
            file.SetLength(200_000_000);
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        Terminal run = Terminal.RunIn(folder.FullName, "analyse", name, "--practical", Magnesium, "--json");

        AssertFault(run, "MB", name);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 50_000_000);
    }

    [Fact]
    public void A_report_is_not_begun_for_a_file_that_cannot_be_read()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "class.csv"), "Group,before,before\nA,30.24,30.25\n");

        Terminal run = Terminal.RunIn(
            folder.FullName, "analyse", "class.csv", "--practical", Magnesium, "--html", "report.html");

        AssertFault(run, "stands over two columns");
        Assert.Equal(["class.csv"], Directory.GetFileSystemEntries(folder.FullName).Select(Path.GetFileName));
    }

    [Fact]
    public void An_unknown_practical_is_one_line_with_the_nearest()
    {
        Terminal run = ClassInput.Run("magnesum-oxide", Headings + "A,30.00,30.24,30.38\n", "--json");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("there is no practical 'magnesum-oxide'", run.Error, StringComparison.Ordinal);
        Assert.Contains("did you mean magnesium-oxide?", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("--resolution", "0")]
    [InlineData("--resolution", "-0.01")]
    [InlineData("--resolution", "1e400")]
    [InlineData("--resolution", "1e-40")]
    [InlineData("--resolution", "fine")]
    [InlineData("--repeatability", "NaN")]
    [InlineData("--repeatability", "-1")]
    public void A_balance_that_cannot_be_is_bad_input(string option, string value)
    {
        Terminal run = ClassInput.Run(Magnesium, Headings + "A,30.00,30.24,30.38\n", option, value);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith($"calx analyse: {option}: '{value}' is not a number", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-30.38")]
    [InlineData("1e400")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("broke")]
    [InlineData("30.3.8")]
    [InlineData("=30.24+0.14")]
    [InlineData("#REF!")]
    public void A_cell_that_is_no_reading_is_named_and_the_rest_is_used(string cell)
    {
        JsonElement answer = ClassInput.Json(Magnesium, Headings + $"A,30.00,30.24,{cell}\nB,29.10,29.35,29.51\n");

        JsonElement rejected = Assert.Single(answer.GetProperty("rejected").EnumerateArray());
        Assert.Equal(2, rejected.GetProperty("row").GetInt32());
        Assert.Equal("D", rejected.GetProperty("column").GetString());
        Assert.Equal("after", rejected.GetProperty("heading").GetString());
        Assert.Equal(cell, rejected.GetProperty("text").GetString());
        Assert.NotEmpty(rejected.GetProperty("reason").GetString()!);
        Assert.Equal(0.16, answer.Group("B").Value("massChange"), 9);
        Assert.Equal(0.24, answer.Group("A").Value("sampleMass"), 9);
        Assert.False(answer.Group("A").GetProperty("readings").TryGetProperty("after", out _));
    }

    [Fact]
    public void A_file_whose_cells_are_all_bad_has_no_result()
    {
        Terminal run = ClassInput.Run(Magnesium, Headings + "A,-1,NaN,1e400\nB,lost,lost,lost\n", "--json");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        string[] lines = run.Error.TrimEnd('\n').Split('\n');
        Assert.Equal(7, lines.Length);
        Assert.StartsWith("class.csv:2:2: '-1': ", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("class.csv:1:1: no group has a reading that can be used", lines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_called_like_a_formula_stays_a_text()
    {
        JsonElement answer = ClassInput.Json(Magnesium, Headings + "=1+1,30.00,30.24,30.38\n\"@SUM(A1)\",29.10,29.35,29.51\n");

        Assert.Equal(0.14, answer.Group("=1+1").Value("massChange"), 9);
        Assert.Equal(0.16, answer.Group("@SUM(A1)").Value("massChange"), 9);
    }

    [Fact]
    public void Control_characters_make_a_file_no_table_and_do_not_reach_the_terminal()
    {
        Terminal run = ClassInput.Run(Magnesium, Headings + "\u001b[31mA,30.00,30.24,30.38\n");

        AssertFault(run, "");
        Assert.DoesNotContain('\u001b', run.Error);
    }

    [Theory]
    [InlineData("--repeatability", "1e-300")]
    [InlineData("--repeatability", "999")]
    [InlineData("--resolution", "0.0000001")]
    [InlineData("--resolution", "999")]
    public void An_odd_balance_still_gives_a_document(string option, string value)
    {
        Terminal run = ClassInput.Run(Magnesium, Headings + "A,30.00,30.24,30.38\nB,29.10,29.35,29.51\n", "--json", option, value);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal(0.14, Schemas.Check("analysis", run.Output).Group("A").Value("massChange"), 9);
    }

    private static void AssertFault(Terminal run, string word, string name = "class.csv")
    {
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith($"{name}:", run.Error, StringComparison.Ordinal);
        Assert.Matches(@"^[^:]+:\d+:\d+: .+\n$", run.Error);
        Assert.Contains(word, run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", run.Error, StringComparison.Ordinal);
    }
}
