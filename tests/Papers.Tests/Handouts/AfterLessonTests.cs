using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Findings;

namespace Calx.Papers.Tests.Handouts;

/// <summary>Report and wall display as a word processor lays them out (LibreOffice, headless). Skipped where there is none.</summary>
public sealed class AfterLessonTests
{
    /// <summary>Sides: one where it can be read so, two at the most for a report; one for a wall.</summary>
    [Fact]
    public async Task Report_and_display_have_the_sides_that_they_should_and_say_the_result()
    {
        Assert.SkipUnless(OfficePdf.IsThere, "LibreOffice or pdftotext is missing.");
        (string Name, ClassFindings Findings, PaperLook Look, int Most)[] cases =
        [
            ("twelve", Analysed.WithCauses, PaperLook.Usual, 1),
            ("eighteen", Analysed.Sound(18), PaperLook.Usual, 1),
            ("all-odd", Analysed.Of("Group,empty,before,after,after 2\n" + string.Join('\n', Enumerable.Range(1, 18).Select(i => $"{i},29.26,29.52,29.30,29.31")), causes: true), PaperLook.Usual, 2),
            ("thirty-six", Analysed.Sound(36), PaperLook.Usual, 2),
            ("uncounted", Analysed.Of("Group,empty,before,after,after 2\n" + string.Join('\n', Enumerable.Range(1, 12).Select(i => $"{i}{(i > 9 ? " (simulated)" : "")},29.26,29.52,29.{69 + (i % 3)},29.{69 + (i % 3)}"))), new PaperLook(SheetSize.Letter, false, null), 2),
            ("letter", Analysed.Sound(18), new PaperLook(SheetSize.Letter, false, null), 2),
        ];
        var papers = new Dictionary<string, Paper>(StringComparer.Ordinal);
        foreach ((string name, ClassFindings findings, PaperLook look, _) in cases)
        {
            var setting = new PaperSetting(StudentSheetTests.Plans["magnesium-oxide"], new PaperOccasion("9F", "26 November 2026", null, null, null, null), look, isChecked: false);
            papers[$"report-{name}"] = ReportSheet.Of(setting, new ClassOutcome(findings, IsInvented: name != "twelve"));
            papers[$"display-{name}"] = DisplaySheet.Of(setting, new ClassOutcome(findings, IsInvented: true, ShowsAccepted: true));
        }

        papers["display-a3"] = DisplaySheet.Of(
            new PaperSetting(StudentSheetTests.Plans["magnesium-oxide"], PaperOccasion.Unsaid, PaperLook.Usual with { Wall = SheetSize.A3 }, isChecked: false), new ClassOutcome(Analysed.Twelve));
        IReadOnlyDictionary<string, string> texts = await OfficePdf.Texts(papers.ToDictionary(p => p.Key, p => PaperWord.Of(p.Value)), TestContext.Current.CancellationToken);
        string[] wrong = [.. cases.SelectMany(c => (string[])[.. Wrong($"report-{c.Name}", c.Most), .. Wrong($"display-{c.Name}", 1)]), .. Wrong("display-a3", 1)];
        Assert.True(wrong.Length == 0, string.Join("; ", wrong));
        foreach ((string name, ClassFindings findings, _, _) in cases)
        {
            Assert.Equal(name != "twelve", texts[$"report-{name}"].Contains("Invented data", StringComparison.Ordinal));
            Assert.Contains("Invented data", texts[$"display-{name}"], StringComparison.Ordinal);
            Assert.Contains("9F · 26 November 2026", texts[$"report-{name}"], StringComparison.Ordinal);
            if (findings.Class.Find("moleRatio") is ClassQuantity key)
            {
                Assert.Contains(key.Text, texts[$"display-{name}"], StringComparison.Ordinal);
                Assert.Contains($"together give {key.Text.Split(' ')[0]} as the {key.Quantity.Label}", texts[$"report-{name}"], StringComparison.Ordinal);
            }
        }

        IEnumerable<string> Wrong(string name, int most) => texts[name].Count(c => c == '\f') is var sides && sides <= most ? [] : [$"{name} has {sides} sides"];
    }
}
