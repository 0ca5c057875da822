using AngleSharp.Dom;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Reports;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Findings;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The class's report on paper: it says what the analysis says, and nothing else.</summary>
public sealed class ReportSheetTests
{
    [Fact]
    public void The_result_with_its_uncertainty_comes_first_and_every_sentence_of_the_conclusion_is_there()
    {
        IReadOnlyList<string> lines = Lines(Analysed.Twelve);
        Assert.Equal("Class report: Burning magnesium in a crucible", lines[0]);
        Assert.Equal(Sentence(Analysed.Twelve, ConclusionTopic.Value), lines[2]);
        string all = string.Join('\n', lines);
        Assert.All(Analysed.Twelve.Class.Sentences, s => Assert.True(all.Contains(Plain(s.Text), StringComparison.Ordinal) || all.Contains(Plain(s.WithoutNames), StringComparison.Ordinal), s.Text));
        Assert.All(TalkingPoints.Of(Analysed.Twelve), p => Assert.Contains(Plain(p.Text), all, StringComparison.Ordinal));
        Assert.Contains("What they cannot show", lines);
    }

    [Fact]
    public void Every_group_with_an_odd_result_is_named_with_what_probably_happened_and_no_other_is()
    {
        string[] told = [.. Written.Blocks(Report(Analysed.Hostile).Content).OfType<PaperBlock.Items>().Single(i => i.Texts[0].Text.StartsWith("Dove", StringComparison.Ordinal)).Texts.Select(t => Plain(t.Text))];
        GroupFindings[] odd = [.. Analysed.Hostile.Groups.Where(g => g.IsAnomalous)];
        Assert.Equal(odd.Length, told.Length);
        Assert.All(odd.Zip(told), pair => Assert.StartsWith($"{pair.First.Name}. {Plain(pair.First.Diagnosis!.ForTeacher)}", pair.Second, StringComparison.Ordinal));
    }

    [Fact]
    public void Where_no_result_is_odd_nothing_is_said_of_odd_ones() =>
        Assert.DoesNotContain(Lines(Analysed.Sound(12)), l => l.Contains("odd result", StringComparison.Ordinal));

    [Fact]
    public void Of_many_odd_results_ten_are_told_of_and_the_others_are_named()
    {
        string rows = string.Join('\n', Enumerable.Range(1, 14).Select(i => $"{i},29.26,29.52,29.30,29.31"));
        IReadOnlyList<string> lines = Lines(Analysed.Of($"Group,empty,before,after,after 2\n{rows}"));
        Assert.Equal(10, lines.Count(l => l.StartsWith("Group ", StringComparison.Ordinal)));
        Assert.Contains("4 more: Group 11, Group 12, Group 13 and Group 14.", lines);
    }

    [Fact]
    public void Without_the_empty_vessel_the_report_says_why_there_is_no_value_and_shows_the_masses()
    {
        ClassFindings findings = Analysed.Of("Group,before,after,after 2\n1,30.24,30.38,30.38\n2,31.20,31.33,31.34\n");
        Assert.Contains("cannot be found: the table lacks the reading", Lines(findings)[2], StringComparison.Ordinal);
        Assert.Equal("The mass through the steps", Assert.Single(Written.Blocks(Report(findings).Content).OfType<PaperBlock.Figure>()).Picture.Title);
    }

    [Fact]
    public void Readings_that_nobody_took_say_so_before_the_result()
    {
        Assert.Equal("Invented data: no such class, no such readings", Lines(Analysed.Twelve, isInvented: true)[1]);
        string csv = "Simulated and not measured: magnesium-oxide with seed 1\nGroup,empty,before,after\n1,30.00,30.24,30.38\n2,31.00,31.20,31.33\n";
        Assert.Equal("Simulated data: no class measured these readings", Lines(Analysed.Of(csv))[1]);
    }

    [Fact]
    public void Charts_are_pictures_that_say_what_is_to_be_seen()
    {
        PaperBlock.Figure[] figures = [.. Written.Blocks(Report(Analysed.Twelve).Content).OfType<PaperBlock.Figure>()];
        Assert.Equal(2, figures.Length);
        Assert.Contains("The class's value is 0.95 ± 0.03.", figures[0].Picture.Description, StringComparison.Ordinal);
        Assert.Contains("12 groups", figures[0].Picture.Description, StringComparison.Ordinal);
    }

    /// <summary>Nothing is to be done from it: there is nothing to be checked first.</summary>
    [Fact]
    public void It_is_no_draft() => Assert.Null(Report(Analysed.Twelve).Heads.Draft);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void It_is_valid_for_a_word_processor(bool isLarge)
    {
        foreach (Paper paper in (Paper[])[Report(Analysed.Hostile, isLarge), DisplaySheetTests.Display(Analysed.Hostile, isLarge)])
        {
            using WordprocessingDocument file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(paper)), isEditable: false);
            Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
        }
    }

    [Fact]
    public void What_a_group_wrote_is_text()
    {
        IDocument page = Page.Of(PaperHtml.Of(Report(Analysed.Hostile), DisplaySheetTests.Display(Analysed.Hostile, isLarge: false)));
        Page.AssertStrict(page);
        Assert.Empty(page.QuerySelectorAll("img, b, link"));
        Assert.Contains("<b>Amber</b>", Page.TextOf(page), StringComparison.Ordinal);
    }

    internal static Paper Report(ClassFindings findings, bool isLarge = false, bool isInvented = false) =>
        ReportSheet.Of(Setting(isLarge), new ClassOutcome(findings, isInvented));

    internal static PaperSetting Setting(bool isLarge) => new(
        StudentSheetTests.Plans["magnesium-oxide"], new PaperOccasion("9F", "26 November 2026", null, null, null, null), new PaperLook(SheetSize.A4, isLarge, null), isChecked: false);

    private static IReadOnlyList<string> Lines(ClassFindings findings, bool isInvented = false) => [.. Written.LinesOf(Report(findings, isInvented: isInvented)).Select(Plain)];

    private static string Sentence(ClassFindings findings, ConclusionTopic topic) => Plain(findings.Class.Sentences.Single(s => s.Topic == topic).Text);

    private static string Plain(string text) => text.Replace('\u00a0', ' ');
}
