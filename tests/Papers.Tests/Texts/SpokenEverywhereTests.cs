using System.IO.Compression;
using System.Net;
using System.Text.RegularExpressions;
using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Handouts;
using Calx.Papers.Plans;
using Calx.Papers.Reports;
using Calx.Papers.SheetCheck;
using Calx.Papers.Slips;
using Calx.Papers.Tables;
using Calx.Papers.Tests.Charts;
using Calx.Papers.Tests.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Papers.Tests.SheetCheck;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

namespace Calx.Papers.Tests.Texts;

/// <summary>
/// Whatever is written in a second language has no text left in the first: the language is handed on all the way. No text stands in code
/// (see <see cref="LiteralTests"/>), so that English could only come from the language that was asked.
/// </summary>
public sealed class SpokenEverywhereTests
{
    /// <summary>Pieces of the texts of papers and engine that are long enough to be told from what a practical says. What both say is left out.</summary>
    private static readonly string[] English =
    [
        .. TextTopic.All.SelectMany(t => t.Texts).SelectMany(t => Regex.Split(t.Value, @"\{\d+\}")).Select(p => p.Trim(' ', ',', ';', ':', '.', '(', ')'))
            .Where(p => p.Length >= 8 && p.Contains(' ', StringComparison.Ordinal)).Distinct()
            .Where(p => BuiltInPracticals.Ids.All(id => !BuiltInPracticals.Find(id)!.SourceText.Contains(p, StringComparison.OrdinalIgnoreCase))),
    ];

    private static ReportHeading Heading => new("9F", "1 June", inventedData: true, PseudoLanguage.Of());

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Papers_with_the_words_behind_their_pictures(bool large)
    {
        foreach (string id in Shelf.Three)
        {
            PaperLook look = new PaperLook(SheetSize.A4, large, null) { Language = PseudoLanguage.Of() };
            var setting = new PaperSetting(PseudoEngine.Plans[id], new PaperOccasion("9F", "1 June", "L2", "3", "Ms Fern", "31 May"), look, isChecked: false);
            PaperSet papers = PaperSet.Of(setting, Enum.GetValues<PaperKind>(), Enum.GetValues<SupportLevel>());
            AssertForeign(PaperHtml.Of([.. papers.Documents]));
            AssertForeign(papers.Workbooks.Select(w => Unpacked(w.Bytes())));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Papers_after_a_lesson(bool large)
    {
        PaperLook look = new PaperLook(SheetSize.A4, large, null) { Language = PseudoLanguage.Of() };
        var setting = new PaperSetting(PseudoEngine.Plans["magnesium-oxide"], new PaperOccasion("9F", "1 June", "L2", "3", "Ms Fern", "31 May", large), look, isChecked: false);
        foreach (ClassFindings findings in new[] { Analysed.WithCauses, Analysed.Hostile, Analysed.AllOdd, Analysed.Sound(36), Analysed.Heated(6, 7), Analysed.Twelve })
        {
            var outcome = new ClassOutcome(PseudoEngine.In(findings), IsInvented: large, ShowsAccepted: large);
            AssertForeign(PaperHtml.Of([ReportSheet.Of(setting, outcome), DisplaySheet.Of(setting, outcome)]));
        }
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Catch_up_packs(bool large)
    {
        PaperLook look = new PaperLook(SheetSize.A4, large, null) { Language = PseudoLanguage.Of() };
        AssertForeign(
            from id in Shelf.Three
            from level in Enum.GetValues<SupportLevel>()
            select PaperHtml.Of(PseudoEngine.CatchUpPapers(id, level, look)));
    }

    [Fact]
    public void The_week_of_a_technician() =>
        AssertForeign(PaperHtml.Of(WeekSheetTests.Full(PseudoLanguage.Of(), "31 May")), PaperHtml.Of(WeekSheetTests.Empty(PseudoLanguage.Of())));

    [Fact]
    public void Student_sheets_with_one_step_on_each_page()
    {
        PaperLook look = PaperLook.Usual with { Language = PseudoLanguage.Of(), IsOneStep = true };
        AssertForeign(Shelf.Three.Select(id => PaperHtml.Of(StudentSheet.Of(
            new PaperSetting(PseudoEngine.Plans[id], PaperOccasion.Unsaid, look, isChecked: false), SupportLevel.Guided))));
    }

    [Fact]
    public void The_page_of_a_plan() =>
        AssertForeign(Planned.All.Select(PseudoEngine.In).Select(plan => PlanReport.Html(plan, plan.Sentences, Heading, draft: true)));

    [Fact]
    public void The_parts_of_a_plan_on_another_page() =>
        AssertForeign(PlanReport.Sections(PseudoEngine.In(Planned.WithWays), [], language: PseudoLanguage.Of()), PlanReport.Verdicts(PseudoEngine.In(Planned.Easy), PseudoLanguage.Of()),
            PlanReport.UnderVerdicts(PseudoEngine.In(Planned.Easy), [], language: PseudoLanguage.Of()));

    [Fact]
    public void The_report_of_a_class() => AssertForeign(
        from findings in new[] { Analysed.Twelve, Analysed.Hostile, Analysed.Sound(60), Analysed.Heated(6, 7) }
        from view in new[] { ReportView.Teacher, ReportView.Class }
        select ClassReport.Html(PseudoEngine.In(findings), Heading, view));

    [Fact]
    public void Charts_that_stand_alone()
    {
        ReportView view = ReportView.Teacher with { Language = PseudoLanguage.Of() };
        Chart?[] charts =
        [
            ClassChart.Of(BuiltInPracticals.Find("magnesium-oxide")!, ["Group 1", "Group 2"], null, view),
            ClassChart.Of(BuiltInPracticals.Find("magnesium-oxide")!, ["Group 1", "Group 2", "Group 3"], PseudoEngine.In(Analysed.Sound(2)), view),
            HistoryChart.Of(HistoryChartTests.Lessons(60, i => $"year {i}"), view), HistoryChart.Of(HistoryChartTests.Lessons(2, i => $"year {i}"), view),
            BalanceChart.Of(HistoryChartTests.Checks(0, 1, 2, 3, 4, 5, -120), "A", language: PseudoLanguage.Of()),
        ];
        AssertForeign(charts.Select(c => $"{c!.Heading}\n{c.Caption}\n{c.Svg()}"));
    }

    [Fact]
    public void What_a_teacher_is_warned_of() =>
        Assert.All(SheetWarnings.Of(PseudoEngine.In(Planned.WithoutEmpty).Settings, PseudoLanguage.Of()), w => Assert.Empty(EnglishIn(w)));

    [Fact]
    public void Record_slips() =>
        AssertForeign(Shelf.Three.Select(id => RecordSlips.Html(BuiltInPracticals.Find(id)!, new SlipSettings(1, 2, trials: 2), Heading, draft: true)));

    [Fact]
    public void What_is_said_of_a_worksheet()
    {
        string[] lines =
        [
            "Its weight is reliable and very accurate, but for human error. The balance has an accuracy of 0.1 g. Masses to four decimals.",
            "| Reading | Trial 1 | Trial 2 |", "| Mass of empty crucible and lid | 24.3 g | 24.1 g |", "| Mass after heating | 24.5 g | 24.8 g |",
            "", "Work out the mass of magnesium.", "Mg + O2 -> MgO", "Mr of MgO = 41.3",
        ];
        PaperLanguage language = PseudoLanguage.Of();
        string text = string.Join('\n', lines);
        IReadOnlyList<SheetFinding> found = CheckedSheet.Findings(
            MadeSheet.Opened(System.Text.Encoding.UTF8.GetBytes(text)), BuiltInPracticals.Find("magnesium-oxide")!, language: language);
        Assert.True(found.Select(f => f.Rule).Distinct().Count() >= 7, string.Join(' ', found.Select(f => f.Rule)));
        AssertForeign(found.Select(f => $"{f.Place}\n{f.Problem}\n{f.Expected}"));
        AssertForeign(
            Assert.IsType<SheetFile.Fault>(SheetFile.Read(new MemoryStream("%PDF-1.4"u8.ToArray()), language)).Reason,
            Assert.IsType<SheetFile.Fault>(SheetFile.Read("no-such-file.docx", language)).Reason);
    }

    [Fact]
    public void What_is_said_of_a_table()
    {
        PaperLanguage language = PseudoLanguage.Of();
        string[] files = ["%PDF-1.4", "", " \n ", "<html>", "\u001F\u008B", "Group,\"empty\nA,1\nB,2", "PK\u0003\u0004abc", "a,b\n1,2\n"];
        AssertForeign(files.Select(f => TableFile.Read(new MemoryStream([.. f.Select(c => (byte)c)]), null, language)).Select(f => f switch
        {
            TableFile.Fault fault => fault.Reason,
            TableFile.Opened opened => $"{opened.Format}\n{string.Join('\n', opened.Notes)}",
            _ => throw new InvalidOperationException("There is no other case."),
        }));
        AssertForeign(Assert.IsType<TableFile.Fault>(TableFile.Read("no-such-file.csv", null, language)).Reason);
    }

    /// <summary>The judge above sees English.</summary>
    [Fact]
    public void English_is_seen() => Assert.NotEmpty(EnglishIn(PlanReport.Html(Planned.Easy, [])));

    private static void AssertForeign(params IEnumerable<string> written) => Assert.All(written, w => Assert.Empty(EnglishIn(w)));

    private static IEnumerable<string> EnglishIn(string written)
    {
        string text = WebUtility.HtmlDecode(Regex.Replace(written, @"(?s)<style>.*?</style>", "")).Replace('\u00a0', ' ');
        return English.Where(p => text.Contains(p.Replace('\u00a0', ' '), StringComparison.Ordinal));
    }

    private static string Unpacked(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file));
        return string.Join('\n', zip.Entries.Select(e =>
        {
            using var reader = new StreamReader(e.Open());
            return reader.ReadToEnd();
        }));
    }
}
