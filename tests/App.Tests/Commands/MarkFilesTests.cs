using System.IO.Compression;
using System.Text.RegularExpressions;
using Calx.App.Output;
using AngleSharp.Html.Parser;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx mark</c> with files to keep and hand out. Values worked out by hand with Mg 24.3, O 16.0.</summary>
public sealed partial class MarkFilesTests : IDisposable
{
    private const string Table = """
        id,student,empty,before,after,massMagnesium,massOxygen,molesMagnesium,molesOxygen,ratio
        s-1,Ada,30.00,30.24,30.38,0.24,0.14,0.00988,0.00875,1.13
        ,"=HYPERLINK(1)",28.11,28.37,28.55,0.26 g,"0,18",1.07 x 10^-2,0.00563,1.90:1
        s-3,"Jürgen ""Jo"" Weiß, Cy",30.00,30.24,30.38,,,,,
        """;

    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public MarkFilesTests() => File.WriteAllText(In("answers.csv"), Table);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Workbook_slips_and_table_for_a_school_system_are_written_and_named()
    {
        Terminal run = Run("--xlsx", "marks.xlsx", "--slips", "slips.html", "--roster", "roster.zip", "--class", "9F", "--date", "2026-11-25", "--school-name", "Larkmoor School");
        Assert.Equal((0, "marks.xlsx\nslips.html\nroster.zip\n"), (run.ExitCode, run.Error));
        Assert.Contains("3 students marked", run.Output, StringComparison.Ordinal);
        using ZipArchive book = ZipFile.OpenRead(In("marks.xlsx"));
        Assert.NotNull(book.GetEntry("xl/workbook.xml"));
        using var html = new HtmlParser().ParseDocument(File.ReadAllText(In("slips.html")));
        Assert.Equal(["Ada", "=HYPERLINK(1)", "Jürgen \"Jo\" Weiß, Cy"], html.QuerySelectorAll(".cut strong").Where((_, i) => i % 2 == 0).Select(s => s.TextContent));
        Assert.Equal(["5 of 5 marks", "4 of 5 marks", "not handed in"], html.QuerySelectorAll(".cut strong").Where((_, i) => i % 2 == 1).Select(s => s.TextContent));
        Assert.Contains("9F · 25 November 2026", html.QuerySelector(".cut")!.TextContent, StringComparison.Ordinal);
        // The program's clock stands at 26 November 2026.
        Assert.Contains("printed 26 November 2026", File.ReadAllText(In("slips.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("roster.zip")]
    [InlineData("roster")]
    public void The_table_for_a_school_system_is_an_archive_or_a_folder(string name)
    {
        Assert.Equal(0, Run("--roster", name, "--class", "9F", "--date", "2026-11-25", "--school-name", "Larkmoor School", "--class-id", "cls-9f", "--term-id", "aut").ExitCode);
        string results = Text(name, "results.csv"), items = Text(name, "lineItems.csv");
        string[] lines = results.TrimEnd().Split("\r\n");
        Assert.Equal(4, lines.Length);
        Assert.Contains(",s-1,fully graded,5,2026-11-26,", lines[1], StringComparison.Ordinal);
        Assert.Contains(",fully graded,4,2026-11-26,", lines[2], StringComparison.Ordinal);
        Assert.EndsWith(",'=HYPERLINK(1)", lines[2], StringComparison.Ordinal);
        Assert.Contains(",s-3,not submitted,0,2026-11-26,", lines[3], StringComparison.Ordinal);
        Assert.EndsWith(",\"Jürgen \"\"Jo\"\" Weiß, Cy\"", lines[3], StringComparison.Ordinal);
        Assert.Contains(",2026-11-25,2026-11-25,cls-9f,", items, StringComparison.Ordinal);
        Assert.Contains(",aut,0,5\r\n", items, StringComparison.Ordinal);
        Assert.Contains("oneroster.version,1.1\r\n", Text(name, "manifest.csv"), StringComparison.Ordinal);
        Assert.Contains("Practical work", Text(name, "categories.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public void Slips_for_a_word_processor_are_a_document()
    {
        Assert.Equal(0, Run("--slips", "slips.docx", "--large", "--letter", "--tint", "fff4d6").ExitCode);
        using ZipArchive document = ZipFile.OpenRead(In("slips.docx"));
        using var reader = new StreamReader(document.GetEntry("word/document.xml")!.Open());
        string text = reader.ReadToEnd();
        Assert.Contains("w:color=\"fff4d6\"", text, StringComparison.Ordinal);
        Assert.Contains("=HYPERLINK(1)", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Slips_are_printed_where_there_is_a_browser()
    {
        Assert.SkipWhen(PdfPrinter.Find() is null, "No browser that prints is installed.");
        Assert.Equal(0, Run("--slips", "slips.pdf").ExitCode);
        byte[] pdf = File.ReadAllBytes(In("slips.pdf"));
        Assert.Equal("%PDF"u8, pdf.AsSpan(0, 4));
        Assert.Single(Page().Matches(System.Text.Encoding.Latin1.GetString(pdf)));
    }

    [Theory]
    [InlineData("--xlsx", "kept.xlsx")]
    [InlineData("--slips", "kept.html")]
    [InlineData("--roster", "kept.zip")]
    [InlineData("--roster", "kept")]
    public void What_is_there_already_is_left_as_it_is_and_nothing_else_is_written(string option, string name)
    {
        File.WriteAllText(In(name), "mine");
        string[] other = option == "--xlsx" ? ["--slips", "new.html"] : ["--xlsx", "new.xlsx"];
        Terminal run = Run([option, name, .. other, "--class", "9F", "--date", "2026-11-25"]);
        Assert.Equal((74, ""), (run.ExitCode, run.Output));
        Assert.StartsWith($"{name}:1:1: there is such a file already", run.Error, StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(In(name)));
        Assert.Equal(2, Directory.GetFileSystemEntries(folder.FullName).Length);
    }

    [Theory]
    [InlineData("--slips: 'slips.txt' names no form; expected a name that ends in .html or .docx or .pdf", "--slips", "slips.txt")]
    [InlineData("--date: '26.11.2026' is no day; a date such as 2026-11-26 was expected", "--slips", "slips.html", "--date", "26.11.2026")]
    [InlineData("--tint: 'yellow' is no colour; six hexadecimal digits were expected, such as fff4d6", "--slips", "slips.html", "--tint", "yellow")]
    [InlineData("--roster: of which class and day? A school system tells lessons apart by them: give --class and --date, such as --class 9F --date 2026-11-26", "--roster", "r.zip", "--class", "9F")]
    [InlineData("--xlsx and --slips: both name 'a.html'; expected a file each", "--xlsx", "a.html", "--slips", "a.html")]
    public void What_cannot_be_done_is_said_in_a_line_and_nothing_is_written(string expected, params string[] words)
    {
        Terminal run = Run(words);
        Assert.Equal((2, "", $"calx mark: {expected}\n"), (run.ExitCode, run.Output, run.Error));
        Assert.Single(Directory.GetFileSystemEntries(folder.FullName));
    }

    /// <summary>Options of the records and of what is written come from several places.</summary>
    [Fact]
    public void No_option_stands_twice_on_the_help_page()
    {
        string[] options = [.. Terminal.Run("mark", "--help").Output.Split('\n').Where(l => l.StartsWith("  --", StringComparison.Ordinal)).Select(l => l.Trim().Split(' ')[0])];
        Assert.Contains("--roster", options);
        Assert.Equal(options.Distinct(), options);
    }

    [Fact]
    public void A_folder_that_is_missing_is_told()
    {
        Terminal run = Run("--xlsx", "nowhere/marks.xlsx");
        Assert.Equal((74, "nowhere/marks.xlsx:1:1: the marks cannot be written there (there is no such folder)\n"), (run.ExitCode, run.Error));
    }

    private string In(string name) => Path.Combine(folder.FullName, name);

    private string Text(string roster, string file)
    {
        if (!roster.EndsWith(".zip", StringComparison.Ordinal))
        {
            return File.ReadAllText(In(Path.Combine(roster, file)));
        }

        using ZipArchive archive = ZipFile.OpenRead(In(roster));
        using var reader = new StreamReader(archive.GetEntry(file)!.Open());
        return reader.ReadToEnd();
    }

    private Terminal Run(params string[] options) => Terminal.RunIn(folder.FullName, ["mark", "answers.csv", "--practical", "magnesium-oxide", .. options]);

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Page();
}
