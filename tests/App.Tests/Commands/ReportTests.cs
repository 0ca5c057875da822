namespace Calx.App.Tests.Commands;

/// <summary>The report beside the answer: written whole where the person said, or not at all.</summary>
public sealed class ReportTests
{
    private const string Csv = "Group,empty,before,after\n<b>A & co,30.00,30.24,30.38\nB,29.10,29.35,29.51\nC,31.40,31.63,31.78\n";

    [Fact]
    public void The_report_is_one_page_that_needs_nothing_else()
    {
        using TemporaryFolder folder = ClassFolder();

        Terminal run = Analyse(folder, "report.html");

        string html = File.ReadAllText(Path.Combine(folder.FullName, "report.html"));
        Assert.Equal((0, "The report is in report.html\n"), (run.ExitCode, run.Error));
        Assert.Contains("</html>", html, StringComparison.Ordinal);
        Assert.Contains("<svg", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch("(src|href)=\"https?:", html);
        Assert.Equal(["class.csv", "report.html"], Names(folder));
    }

    [Fact]
    public void A_group_s_name_stays_a_text_in_the_report()
    {
        using TemporaryFolder folder = ClassFolder();

        Analyse(folder, "report.html");

        string html = File.ReadAllText(Path.Combine(folder.FullName, "report.html"));
        Assert.DoesNotContain("<b>A", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;A &amp; co", html, StringComparison.Ordinal);
    }

    [Fact]
    public void An_older_report_of_that_name_is_replaced()
    {
        using TemporaryFolder folder = ClassFolder();
        File.WriteAllText(Path.Combine(folder.FullName, "report.html"), "old");

        Assert.Equal(0, Analyse(folder, "report.html").ExitCode);
        Assert.StartsWith("<!", File.ReadAllText(Path.Combine(folder.FullName, "report.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nowhere/report.html")]
    [InlineData(".")]
    public void A_report_that_cannot_be_written_is_told_and_nothing_is_left(string path)
    {
        using TemporaryFolder folder = ClassFolder();

        Terminal run = Analyse(folder, path);

        Assert.Equal((74, ""), (run.ExitCode, run.Output));
        Assert.StartsWith($"{path}:1:1: the report cannot be written there", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.TrimEnd('\n').Split('\n'));
        Assert.Equal(["class.csv"], Names(folder));
    }

    [Theory]
    [InlineData("class.csv")]
    [InlineData("./class.csv")]
    public void The_report_does_not_take_the_place_of_the_class_s_file(string path)
    {
        using TemporaryFolder folder = ClassFolder();

        Terminal run = Analyse(folder, path);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("give it another name", run.Error, StringComparison.Ordinal);
        Assert.Equal(Csv, File.ReadAllText(Path.Combine(folder.FullName, "class.csv")));
    }

    [Fact]
    public void The_demo_prints_a_result_and_never_replaces_a_report()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();

        Terminal first = Terminal.RunIn(folder.FullName, "demo", "--no-browser");
        Terminal second = Terminal.RunIn(folder.FullName, "demo", "--no-browser", "--out", ".");

        Assert.Equal((0, "", 0, ""), (first.ExitCode, first.Error, second.ExitCode, second.Error));
        Assert.Contains("an invented class", first.Output, StringComparison.Ordinal);
        Assert.Contains("Results to look into", first.Output, StringComparison.Ordinal);
        Assert.Equal(["calx-demo-report-2.html", "calx-demo-report.html"], Names(folder));
    }

    private static TemporaryFolder ClassFolder()
    {
        TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "class.csv"), Csv);
        return folder;
    }

    private static Terminal Analyse(TemporaryFolder folder, string report) => Terminal.RunIn(
        folder.FullName, "analyse", "class.csv", "--practical", "magnesium-oxide", "--html", report);

    private static IEnumerable<string?> Names(TemporaryFolder folder) =>
        Directory.GetFileSystemEntries(folder.FullName).Select(Path.GetFileName).Order(StringComparer.Ordinal);
}
