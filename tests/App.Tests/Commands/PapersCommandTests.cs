using System.Text;
using System.Text.RegularExpressions;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx papers</c>.</summary>
public sealed partial class PapersCommandTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    [Fact]
    public void Everything_is_written_for_a_word_processor_and_to_print()
    {
        Terminal run = Run("papers", "magnesium-oxide", "--out", "out", "--class", "9F");
        Assert.Equal((0, ""), (run.ExitCode, run.Output));
        string[] expected = ["answer-key", "cover-key", "cover-questions", "cover-sheet", "lesson-strip", "requisition", "risk-notes", "student-sheet-guided", "student-sheet-open", "student-sheet-standard"];
        Assert.Equal(
            expected.SelectMany(e => (string[])[$"{e}.docx", $"{e}.html"]).Append("class-results.xlsx").Order(StringComparer.Ordinal),
            Directory.GetFiles(In("out")).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.Contains("9F", File.ReadAllText(In("out/requisition.html")), StringComparison.Ordinal);
        Assert.All(Directory.GetFiles(In("out"), "*.html"), f => Assert.Contains("magnesium-oxide, version 2 · printed 26 November 2026", File.ReadAllText(f), StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_is_there_is_left_as_it_is_and_nothing_else_is_written()
    {
        Directory.CreateDirectory(In("out"));
        File.WriteAllText(In("out/answer-key.html"), "mine");
        Terminal run = Run("papers", "magnesium-oxide", "--out", "out", "--format", "html");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("answer-key.html:1:1: there is such a file already", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(Assert.Single(Directory.GetFiles(In("out")))));
    }

    [Fact]
    public void A_file_in_place_of_the_folder_is_left_as_it_is()
    {
        File.WriteAllText(In("out"), "mine");
        Terminal run = Run("papers", "magnesium-oxide", "--out", "out");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("out:1:1: this is a file, and it is left as it is; name a folder", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(In("out")));
    }

    [Fact]
    public void What_the_table_has_no_row_for_is_told_and_the_papers_are_written_all_the_same()
    {
        Terminal run = Run("papers", "magnesium-oxide", "--no-empty", "--set", "student", "--level", "open", "--format", "docx", "--out", "out");
        Assert.Equal(1, run.ExitCode);
        Assert.Contains("calx papers: 'Mass of magnesium' is asked for, but the table has no row for 'Mass of empty crucible and lid'.", run.Error, StringComparison.Ordinal);
        Assert.Equal("student-sheet-open.docx", Path.GetFileName(Assert.Single(Directory.GetFiles(In("out")))));
    }

    [Fact]
    public void The_same_seed_gives_the_same_cover_papers_and_another_seed_others()
    {
        string[] sheets = [.. new[] { ("7", "a"), ("7", "b"), ("8", "c") }.Select(run =>
        {
            Assert.Equal(0, Run("papers", "magnesium-oxide", "--set", "cover", "--format", "html", "--seed", run.Item1, "--out", run.Item2).ExitCode);
            return File.ReadAllText(In($"{run.Item2}/cover-questions.html"));
        })];
        Assert.Equal(sheets[0], sheets[1]);
        Assert.NotEqual(sheets[0], sheets[2]);
        Assert.Contains("No practical work in this lesson", File.ReadAllText(In("a/cover-sheet.html")), StringComparison.Ordinal);
        Assert.Equal(3, Directory.GetFiles(In("a")).Length);
    }

    [Fact]
    public void One_step_a_page_is_a_sheet_of_its_own_name_and_leaves_other_papers_as_they_are()
    {
        Terminal run = Run("papers", "magnesium-oxide", "--one-step", "--large", "--set", "student", "--set", "lesson", "--level", "open", "--format", "html", "--out", "out");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["lesson-strip.html", "student-sheet-open-one-step.html"], Directory.GetFiles(In("out")).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.Contains("Step 1 of 11", File.ReadAllText(In("out/student-sheet-open-one-step.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void More_than_a_class_may_use_gives_no_papers()
    {
        Terminal run = Run("papers", "magnesium-oxide", "--mass", "0.5", "--out", "out");
        Assert.Equal(1, run.ExitCode);
        Assert.False(Directory.Exists(In("out")));
    }

    [Theory]
    [InlineData("calx papers: which practical? For example: calx papers magnesium-oxide --out papers", "papers", "--out", "out")]
    [InlineData("calx papers: into which folder? For example: calx papers magnesium-oxide --out papers", "papers", "magnesium-oxide")]
    [InlineData("calx papers: --set: 'sheets' is not known; expected student, requisition, key, risk, lesson, results, report, display, cover, all", "papers", "magnesium-oxide", "--out", "out", "--set", "sheets")]
    [InlineData("calx papers: --level: 'hard' is not known; expected guided, standard, open, all", "papers", "magnesium-oxide", "--out", "out", "--level", "hard")]
    [InlineData("calx papers: --format: 'rtf' is not known; expected docx, html, xlsx, pdf, svg, png", "papers", "magnesium-oxide", "--out", "out", "--format", "rtf")]
    [InlineData("calx papers: --tint: 'cream' is no colour; six hexadecimal digits were expected, such as fff4d6", "papers", "magnesium-oxide", "--out", "out", "--tint", "cream")]
    public void Words_that_are_not_understood_say_what_was_expected(string expected, params string[] words)
    {
        Terminal run = Run(words);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(In("out")));
    }

    /// <summary>Sides of a paper: common practice in schools, where a sheet has a front and a back.</summary>
    [Fact]
    public void Papers_are_printed_to_PDF_with_the_sides_that_they_should_have()
    {
        Terminal run = Run("papers", "sodium-hydrogencarbonate", "--out", "out", "--format", "pdf", "--set", "student", "--level", "guided", "--set", "requisition");
        Assert.SkipWhen(run.Error.Contains("no browser was found", StringComparison.Ordinal), "No browser of the Chromium family was found.");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(2, Sides("out/student-sheet-guided.pdf"));
        Assert.Equal(1, Sides("out/requisition.pdf"));
    }

    public void Dispose() => folder.Dispose();

    private int Sides(string pdf) => Page().Count(Encoding.Latin1.GetString(File.ReadAllBytes(In(pdf))));

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    private string In(string name) => Path.Combine(folder.FullName, name);

    [GeneratedRegex(@"/Type\s*/Page\b")]
    private static partial Regex Page();
}
