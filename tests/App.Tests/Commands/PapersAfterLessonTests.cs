using System.Globalization;
using System.Text.Json;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx papers --set report|display</c> and pictures as files.</summary>
public sealed class PapersAfterLessonTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public PapersAfterLessonTests() => File.Copy(Checkout.PathOf("examples/class-of-twelve/weighings.csv"), In("class.csv"));

    [Fact]
    public void The_report_has_the_values_and_sentences_of_an_analysis_of_the_same_file()
    {
        Terminal analysed = Run("analyse", "class.csv", "--practical", "magnesium-oxide", "--json");
        JsonElement answer = JsonDocument.Parse(analysed.Output).RootElement;
        Terminal run = Run("papers", "magnesium-oxide", "--set", "report", "--set", "display", "--results", "class.csv", "--class", "9F", "--format", "html", "--out", "out");
        Assert.Equal((0, ""), (run.ExitCode, run.Output));
        string report = Text("out/class-report.html"), display = Text("out/wall-display.html");
        Assert.All(answer.GetProperty("class").GetProperty("conclusion").EnumerateArray().Select(s => s.GetString()!).Where(s => !s.Contains("left out of these values", StringComparison.Ordinal)), s => Assert.Contains(s, report, StringComparison.Ordinal));
        foreach (JsonElement group in answer.GetProperty("groups").EnumerateArray().Where(g => g.GetProperty("anomalous").GetBoolean()))
        {
            Assert.Contains($"{group.GetProperty("group").GetString()}. {group.GetProperty("forTeacher").GetString()}", report, StringComparison.Ordinal);
        }

        JsonElement key = answer.GetProperty("class").GetProperty("quantities").GetProperty("moleRatio");
        string value = key.GetProperty("value").GetDouble().ToString("F2", CultureInfo.InvariantCulture);
        string uncertainty = key.GetProperty("standardUncertainty").GetDouble().ToString("F2", CultureInfo.InvariantCulture);
        Assert.Equal($"{value} ± {uncertainty}", new HtmlParser().ParseDocument(File.ReadAllText(In("out/wall-display.html"))).QuerySelector(".huge")!.TextContent.Replace('\u00a0', ' '));
        Assert.DoesNotContain("accepted", display, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_said_of_the_balances_holds_for_the_results_too()
    {
        Terminal analysed = Run("analyse", "class.csv", "--practical", "magnesium-oxide", "--resolution", "0.05", "--repeatability", "0.05", "--json");
        string value = JsonDocument.Parse(analysed.Output).RootElement.GetProperty("class").GetProperty("conclusion")[1].GetString()!;
        Run("papers", "magnesium-oxide", "--set", "report", "--results", "class.csv", "--resolution", "0.05", "--repeatability", "0.05", "--format", "html", "--out", "coarse");
        Assert.Contains(value, Text("coarse/class-report.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void With_results_everything_is_the_report_and_the_display_too()
    {
        Assert.Equal(0, Run("papers", "magnesium-oxide", "--results", "class.csv", "--accepted", "--a3", "--format", "html", "--out", "out").ExitCode);
        string[] names = [.. Directory.GetFiles(In("out")).Select(f => Path.GetFileNameWithoutExtension(f)!)];
        Assert.Contains("class-report", names);
        Assert.Contains("size: A3", File.ReadAllText(In("out/wall-display.html")), StringComparison.Ordinal);
        Assert.Contains("accepted 1", Text("out/wall-display.html"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("calx papers: --set report: of which results? Give --results and a class's file", "--set", "report")]
    [InlineData("calx papers: --set display: of which results?", "--set", "display", "--set", "student")]
    [InlineData("calx papers: --results: none of these papers tells results; add --set report or --set display", "--set", "key", "--results", "class.csv")]
    [InlineData("nothing.csv:1:1: ", "--set", "report", "--results", "nothing.csv")]
    [InlineData("calx papers: --format: none of these papers has a picture", "--set", "requisition", "--format", "svg")]
    public void What_cannot_be_done_is_said_in_a_line_and_nothing_is_written(string expected, params string[] words)
    {
        Terminal run = Run(["papers", "magnesium-oxide", "--out", "out", .. words]);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.StartsWith(expected, run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
        Assert.False(Directory.Exists(In("out")));
    }

    [Fact]
    public void A_cell_that_cannot_be_taken_is_told_with_its_place_and_counted_on_the_report()
    {
        File.WriteAllText(In("bad.csv"), "Group,empty,before,after\n1,30.00,30.24,30.38\n2,31.00,3l.20,31.33\n3,31.10,31.35,31.51\n");
        Terminal run = Run("papers", "magnesium-oxide", "--set", "report", "--results", "bad.csv", "--format", "html", "--out", "out");
        Assert.Equal(0, run.ExitCode);
        Assert.StartsWith("bad.csv:3:3: '3l.20': ", run.Error, StringComparison.Ordinal);
        Assert.Contains("One cell of the class’s table could not be taken as a mass.", Text("out/class-report.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Pictures_are_written_as_files_and_nothing_else_is()
    {
        Terminal run = Run("papers", "magnesium-oxide", "--set", "student", "--set", "report", "--results", "class.csv", "--format", "svg", "--format", "png", "--out", "out");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(
            ((string[])["drawing-cooling", "drawing-heating", "drawing-weighing", "ratio-chart", "sample-chart"]).SelectMany(n => (string[])[$"{n}.png", $"{n}.svg"]),
            Directory.GetFiles(In("out")).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        // Beside papers they come too.
        Assert.Equal(0, Run("papers", "magnesium-oxide", "--set", "student", "--level", "open", "--format", "docx", "--format", "png", "--out", "both").ExitCode);
        Assert.Equal(["drawing-cooling.png", "drawing-heating.png", "drawing-weighing.png", "student-sheet-open.docx"], Directory.GetFiles(In("both")).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
    }

    public void Dispose() => folder.Dispose();

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    private string In(string name) => Path.Combine(folder.FullName, name);

    /// <summary>Text of a page with plain spaces.</summary>
    private string Text(string page)
    {
        IDocument read = new HtmlParser().ParseDocument(File.ReadAllText(In(page)));
        return read.Body!.TextContent.Replace('\u00a0', ' ');
    }
}
