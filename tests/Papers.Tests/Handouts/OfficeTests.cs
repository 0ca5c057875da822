using System.Diagnostics;
using System.Text.RegularExpressions;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The papers as a word processor lays them out (LibreOffice, headless): each opens, has the sides that it should, and says what it
/// must. Skipped where there is no LibreOffice or no pdftotext.</summary>
public sealed partial class OfficeTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-papers-");

    /// <summary>Sides of a paper: common practice in schools, where a sheet has a front and a back.</summary>
    private static readonly Dictionary<string, int> Sides = new(StringComparer.Ordinal)
    {
        ["student-sheet-guided"] = 2, ["student-sheet-standard"] = 2, ["student-sheet-open"] = 2,
        ["requisition"] = 1, ["answer-key"] = 1, ["risk-notes"] = 2, ["lesson-strip"] = 1,
    };

    [Fact]
    public async Task Every_paper_opens_has_its_sides_and_says_what_it_must()
    {
        Assert.SkipWhen(Find("soffice") is null || Find("pdftotext") is null, "LibreOffice or pdftotext is missing.");
        var papers = new List<(string Name, Paper Paper, Practical Practical)>();
        foreach ((string id, Plan plan) in StudentSheetTests.Plans)
        {
            foreach (Paper paper in PaperSet.Of(StudentSheetTests.Setting(plan), Enum.GetValues<PaperKind>(), Enum.GetValues<SupportLevel>()).Documents)
            {
                string name = $"{id}.{paper.Id}";
                await File.WriteAllBytesAsync(Path.Combine(folder.FullName, $"{name}.docx"), PaperWord.Of(paper), TestContext.Current.CancellationToken);
                papers.Add((name, paper, BuiltInPracticals.Find(id)!));
            }
        }

        await Run("soffice", [$"-env:UserInstallation=file://{folder.FullName}/profile", "--headless", "--convert-to", "pdf", "--outdir", folder.FullName, .. papers.Select(p => Path.Combine(folder.FullName, $"{p.Name}.docx"))]);
        var wrong = new List<string>();
        foreach ((string name, Paper paper, Practical practical) in papers)
        {
            string pdf = Path.Combine(folder.FullName, $"{name}.pdf");
            Assert.True(File.Exists(pdf), $"{name} did not open.");
            string text = await Run("pdftotext", ["-layout", pdf, "-"]);
            int sides = text.Count(c => c == '\f');
            if (sides != Sides[paper.Id])
            {
                wrong.Add($"{name} has {sides} sides");
            }

            string words = Spaces().Replace(text, " ");
            Assert.Contains(practical.Title, words, StringComparison.Ordinal);
            Assert.Contains("DRAFT", words, StringComparison.Ordinal);
            Assert.Contains($"{practical.Id}, version {practical.Version}", words, StringComparison.Ordinal);
            Assert.Contains($"1 of {sides}", words, StringComparison.Ordinal);
            if (paper.Id.StartsWith("student", StringComparison.Ordinal))
            {
                Assert.Contains("Your balance shows two decimals", words, StringComparison.Ordinal);
                Assert.True(words.IndexOf("Take care", StringComparison.Ordinal) < words.IndexOf("What you do", StringComparison.Ordinal));
            }
        }

        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    public void Dispose() => folder.Delete(recursive: true);

    private static string? Find(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(d => Path.Combine(d, program)).FirstOrDefault(File.Exists);

    private static async Task<string> Run(string program, IEnumerable<string> words)
    {
        using Process process = Process.Start(new ProcessStartInfo(Find(program)!, words) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        Task<string> errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        string said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, await errors);
        return said;
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
