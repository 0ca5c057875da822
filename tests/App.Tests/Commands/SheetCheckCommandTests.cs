using System.Text.Json;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx papers check</c> as it is typed.</summary>
public sealed class SheetCheckCommandTests
{
    private const string Clean = """
        Safety
        Eye protection on. Do not look at the burning magnesium; keep the lid on.
        Everything is hot for long: tongs every time.
        Do not add water to the residue.

        Reading | Mass / g
        Empty crucible and lid |
        Crucible, lid and magnesium |
        After heating |

        Calculate the mass of magnesium.
        """;

    [Fact]
    public void Nothing_to_look_at_is_said_with_exit_code_0()
    {
        Terminal run = Run(Clean);
        Assert.Equal("sheet.txt: nothing found to look at, checked for Burning magnesium in a crucible.\n", run.Output);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public void A_finding_begins_with_its_place_and_gives_exit_code_1()
    {
        Terminal run = Run(Clean.Replace("Calculate the mass", "Calculate the weight", StringComparison.Ordinal));
        Assert.Equal(1, run.ExitCode);
        Assert.Equal(
            """
            line 11, column 15: Calculate the weight of magnesium.
              'weight' is the pull of gravity, in newtons; a balance shows a mass, in grams.
              Expected: 'mass'.

            sheet.txt: one thing to look at, checked for Burning magnesium in a crucible.

            """,
            run.Output);
    }

    [Fact]
    public void The_resolution_decides_which_decimals_are_right()
    {
        string filled = Clean.Replace("After heating |", "After heating | 28.912", StringComparison.Ordinal);
        Assert.Contains("Expected: two decimals", Run(filled).Output, StringComparison.Ordinal);
        Assert.Equal(0, Run(filled, "--resolution", "0.001").ExitCode);
        Assert.Contains("one decimal", Run(filled, "--resolution", "0.1").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_json_keeps_to_its_schema()
    {
        JsonElement clean = Schemas.Check("sheet-check", Run(Clean, "--json").Output);
        Assert.Equal(0, clean.GetProperty("findings").GetArrayLength());
        Terminal run = Run(Clean.Replace("Eye protection on. ", "Are the results reliable? ", StringComparison.Ordinal), "--json");
        JsonElement found = Schemas.Check("sheet-check", run.Output);
        Assert.Equal(1, run.ExitCode);
        Assert.Equal(("sheet.txt", "magnesium-oxide"), (found.GetProperty("file").GetString(), found.GetProperty("practical").GetString()));
        Assert.Equal(["loose-word", "caution"], found.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("rule").GetString()));
    }

    [Fact]
    public void A_file_that_cannot_be_read_is_one_line_and_exit_code_2()
    {
        Terminal run = Run("%PDF-1.7");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Equal("sheet.txt:1:1: a PDF document; give the DOCX that it was made from\n", run.Error);
        Assert.Equal("none.docx:1:1: there is no such file\n", Terminal.Run("papers", "check", "none.docx", "--practical", "magnesium-oxide").Error);
    }

    [Fact]
    public void What_was_not_said_is_asked_for()
    {
        Assert.Contains("which file?", Terminal.Run("papers", "check").Error, StringComparison.Ordinal);
        Terminal run = Terminal.Run("papers", "check", "sheet.txt");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("which practical?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_help_of_papers_names_it_and_papers_itself_works_as_before()
    {
        Assert.Contains("  check  ", Terminal.Run("papers", "--help").Output, StringComparison.Ordinal);
        Assert.StartsWith("calx papers check FILE [options]", Terminal.Run("papers", "check", "--help").Output, StringComparison.Ordinal);
        Assert.Contains("calx papers: which practical?", Terminal.Run("papers").Error, StringComparison.Ordinal);
        Assert.Contains("into which folder?", Terminal.Run("papers", "magnesium-oxide").Error, StringComparison.Ordinal);
        Assert.Contains("'more' is not a known word", Terminal.Run("papers", "magnesium-oxide", "more").Error, StringComparison.Ordinal);
    }

    private static Terminal Run(string sheet, params string[] options)
    {
        using var folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "sheet.txt"), sheet);
        return Terminal.RunIn(folder.FullName, ["papers", "check", "sheet.txt", "--practical", "magnesium-oxide", .. options]);
    }
}
