using System.Diagnostics;
using System.Text.RegularExpressions;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Week;
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
        ["cover-sheet"] = 1, ["cover-questions"] = 1, ["cover-key"] = 1,
    };

    [Fact]
    public async Task Every_paper_opens_has_its_sides_and_says_what_it_must()
    {
        Assert.SkipWhen(Find("soffice") is null || Find("pdftotext") is null, "LibreOffice or pdftotext is missing.");
        var papers = new List<(string Name, Paper Paper, Practical Practical)>();
        foreach ((string id, Plan plan) in StudentSheetTests.Plans)
        {
            bool proven = Shelf.Three.Contains(id);
            // Of the rest of the shelf the level that is handed out most.
            foreach (Paper paper in PaperSet.Of(StudentSheetTests.Setting(plan), Enum.GetValues<PaperKind>(), proven ? Enum.GetValues<SupportLevel>() : Shelf.Fullest.Contains(id) ? [SupportLevel.Guided, SupportLevel.Standard] : [SupportLevel.Standard]).Documents)
            {
                string name = $"{id}.{paper.Id}";
                await File.WriteAllBytesAsync(Path.Combine(folder.FullName, $"{name}.docx"), PaperWord.Of(paper), TestContext.Current.CancellationToken);
                papers.Add((name, paper, BuiltInPracticals.Find(id)!));
            }

            foreach (PaperLook look in (PaperLook[])(!proven ? [] : [new(SheetSize.A4, false, null, IsOneStep: true), new(SheetSize.A4, true, null, IsOneStep: true)]))
            {
                Paper sheet = OneStepTests.Sheet(id, look);
                string name = $"{id}.{sheet.Id}{(look.IsLarge ? "-large" : "")}";
                await File.WriteAllBytesAsync(Path.Combine(folder.FullName, $"{name}.docx"), PaperWord.Of(sheet), TestContext.Current.CancellationToken);
                papers.Add((name, sheet, BuiltInPracticals.Find(id)!));
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
            wrong.AddRange(paper.Look.IsOneStep ? StepsNotAlone(name, text) : sides == Most(paper, practical) || (sides < Most(paper, practical) && !Shelf.Three.Contains(practical.Id)) ? [] : (string[])[$"{name} has {sides} sides"]);

            string words = Spaces().Replace(text, " ");
            Assert.Contains(practical.Title, words, StringComparison.Ordinal);
            // Where nothing is handled, no amount or step waits for a check.
            Assert.Contains(paper.Id.StartsWith("cover", StringComparison.Ordinal) ? "imulated data" : "DRAFT", words, StringComparison.Ordinal);
            Assert.Contains($"{practical.Id}, version {practical.Version}", words, StringComparison.Ordinal);
            Assert.Contains($"1 of {sides}", words, StringComparison.Ordinal);
            if (paper.Id.StartsWith("student", StringComparison.Ordinal))
            {
                Assert.Contains("Your balance shows two decimals", words, StringComparison.Ordinal);
                Assert.True(words.IndexOf("Take care", StringComparison.Ordinal) < words.IndexOf(paper.Look.IsOneStep ? "Step 1 of" : "What you do", StringComparison.Ordinal));
            }

            // As they were written into the file: a cell after another.
            string read = Spaces().Replace(Shelf.Three.Contains(practical.Id) ? await Run("pdftotext", ["-raw", pdf, "-"]) : Written.Of(paper), " ");
            string[] demanded = [.. Demanded(paper.Id, practical).Where(d => !read.Contains(d, StringComparison.OrdinalIgnoreCase))];
            Assert.True(demanded.Length == 0, $"{name} lacks {string.Join("; ", demanded)}");
        }

        Assert.True(wrong.Count == 0, string.Join("; ", wrong));
    }

    /// <summary>Squared paper for a curve is a side more.</summary>
    private static int Most(Paper paper, Practical practical) =>
        Sides[paper.Id] + (practical.Series is not null && paper.Id.StartsWith("student", StringComparison.Ordinal) ? 1 : 0);

    /// <summary>Cautions, headings and decimals of the practical that a paper of such an id must have.</summary>
    private static IEnumerable<string> Demanded(string id, Practical practical) => id.Split('-')[0] switch
    {
        "student" => [.. practical.Hazards.Select(h => h.Control), .. practical.Readings.Where(r => r.Unit == "g").Select(r => r.Label), "/ g", "What you read"],
        "risk" => [.. practical.Hazards.Select(h => h.Control), .. practical.Emergencies.Select(e => e.Act), .. practical.Technician.Waste],
        "answer" => [.. practical.Answers.Select(a => a.Label), "Worked values", "/ g"],
        _ => [],
    };

    [Fact]
    public async Task A_day_of_two_lessons_of_the_technicians_week_is_one_side()
    {
        Assert.SkipWhen(Find("soffice") is null || Find("pdftotext") is null, "LibreOffice or pdftotext is missing.");
        var day = new DateOnly(2026, 11, 26);
        WeekLesson[] lessons =
        [
            .. StudentSheetTests.Plans.Where(p => Shelf.Three.Contains(p.Key)).Select(p => p.Value).Take(2).Select((p, i) => new WeekLesson(day, new PaperOccasion("9F", null, "Lab 2", FormattableString.Invariant($"{i + 1}"), "R. Quill", null), p.Settings)),
        ];
        await File.WriteAllBytesAsync(Path.Combine(folder.FullName, "week.docx"), PaperWord.Of(WeekSheet.Of(new TechnicianWeek(day.AddDays(-3), lessons))), TestContext.Current.CancellationToken);
        await Run("soffice", [$"-env:UserInstallation=file://{folder.FullName}/profile", "--headless", "--convert-to", "pdf", "--outdir", folder.FullName, Path.Combine(folder.FullName, "week.docx")]);
        string text = await Run("pdftotext", ["-layout", Path.Combine(folder.FullName, "week.pdf"), "-"]);
        Assert.Equal(1, text.Count(c => c == '\f'));
        Assert.All((string[])["Thursday 26 November", "Counted out and back", "To prepare:", "Still hot afterwards", "Used up in the week"], part => Assert.Contains(part, text, StringComparison.Ordinal));
    }

    /// <summary>Each step has a page of its own, whole: its heading and its box stand on the same one.</summary>
    private static IEnumerable<string> StepsNotAlone(string name, string text)
    {
        string[] pages = [.. text.Split('\f').Where(p => p.Contains("Step ", StringComparison.Ordinal) && StepHeading().IsMatch(p))];
        int steps = int.Parse(StepHeading().Match(pages[0]).Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture);
        return pages.Select((page, i) => StepHeading().Matches(page) is [var only] && only.Groups[1].Value == FormattableString.Invariant($"{i + 1}") && page.Contains("Done", StringComparison.Ordinal)
            ? null : $"{name}: page of step {i + 1}").Append(pages.Length == steps ? null : $"{name}: {pages.Length} of {steps} steps").OfType<string>();
    }

    [GeneratedRegex(@"Step (\d+) of (\d+)")]
    private static partial Regex StepHeading();

    public void Dispose() => folder.Delete(recursive: true);

    internal static string? Find(string program) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(d => Path.Combine(d, program)).FirstOrDefault(File.Exists);

    internal static async Task<string> Run(string program, IEnumerable<string> words)
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
