using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Findings;

namespace Calx.Papers.Handouts;

/// <summary>The class's report for the teacher after the lesson: the result with its uncertainty in words, charts, the conclusion with what
/// the data cannot show, the groups with an odd result, and what to talk about. One side for up to 18 groups of which few are odd.</summary>
public static class ReportSheet
{
    /// <summary>What its file is called.</summary>
    public const string Id = "class-report";

    private const double WidthOfOneChart = 118;
    private const double WidthOfHalf = 86;

    /// <summary>More quantities that cannot be found are not named.</summary>
    private const int MostNotFound = 2;

    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson. That the practical still has to be checked is not said: nothing is to be done from a report.</param>
    /// <param name="outcome">What the class found.</param>
    public static Paper Of(PaperSetting setting, ClassOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(outcome);
        ClassReportTexts texts = new(setting.Language);
        ClassFindings findings = outcome.Findings;
        PaperBlock[] content =
        [
            .. Label(outcome, texts),
            new PaperBlock.Paragraph(findings.Practical.Question),
            .. About(findings, ConclusionTopic.Value).Select(s => new PaperBlock.Paragraph(Phrase.Bold(s))),
            .. Charts(findings, setting),
            .. Rejected(findings.Readings.Rejected.Count, texts),
            .. Beside(setting.Look.IsLarge, Showing(findings, texts), NotShowing(findings, texts)),
            .. OddGroups.Of(findings, setting.Language),
            .. Section(texts.TalkHeading, ListKind.Numbers, TalkingPoints.Of(findings).Select(p => p.Text)),
        ];
        RunningHeads heads = setting.Heads(texts.Kind) with { Draft = null };
        return new Paper(Id, texts.Title(setting.Practical.Title), heads, content, setting.Look.Denser());
    }

    /// <summary>That readings are invented or simulated, in a frame.</summary>
    internal static IEnumerable<PaperBlock> Label(ClassOutcome outcome, ClassReportTexts texts) =>
        outcome.Label(texts) is string label ? [new PaperBlock.Panel(PanelKind.Caution, label, [])] : [];

    private static IEnumerable<PaperBlock> Charts(ClassFindings findings, PaperSetting setting)
    {
        bool isLarge = setting.Look.IsLarge;
        ReportView view = ReportView.Teacher with { Language = setting.Language };
        ChartSize size = isLarge ? ChartSize.Whole : ChartSize.Half;
        // Where mass is read against time, that is the picture of the lesson.
        Chart? second = SeriesChart.Of(findings, view, size) ?? SampleChart.Of(findings, view, size);
        Chart[] charts = [.. new[] { RatioChart.Of(findings, view, size), second }.OfType<Chart>()];
        if (charts.Length == 2 && !isLarge)
        {
            return [new PaperBlock.Beside([Figure(charts[0], WidthOfHalf)], [Figure(charts[1], WidthOfHalf)], leftShare: 0.5)];
        }

        // Without the reading that the result needs there is still the way of the masses.
        Chart[] others = charts.Length > 0 ? charts : [.. new[] { StepsChart.Of(findings, view) }.OfType<Chart>()];
        return others.Select(c => Figure(c, isLarge || charts.Length == 0 ? WidthOfOneChart : WidthOfHalf));
    }

    private static IEnumerable<PaperBlock> Rejected(int cells, ClassReportTexts texts) => cells == 0 ? [] :
    [
        new PaperBlock.Paragraph(cells == 1 ? texts.RejectedCell : texts.RejectedCells(Sentences.Count(cells)), ParagraphLook.Small),
    ];

    private static PaperBlock.Figure Figure(Chart chart, double width) =>
        new(chart.Picture, Text.Together(chart.Caption), width);

    private static IReadOnlyList<PaperBlock> Showing(ClassFindings findings, ClassReportTexts texts) => [.. Section(
        texts.ShowHeading,
        ListKind.Bullets,
        About(findings, ConclusionTopic.Change, ConclusionTopic.Accepted, ConclusionTopic.Equations, ConclusionTopic.Choice, ConclusionTopic.Formula, ConclusionTopic.Curve, ConclusionTopic.Uncounted))];

    private static IReadOnlyList<PaperBlock> NotShowing(ClassFindings findings, ClassReportTexts texts) => [.. Section(
        texts.NotShowHeading,
        ListKind.Bullets,
        [
            .. About(findings, ConclusionTopic.ConstantMass),
            .. findings.Identifiability.Undetermined.Where(m => m.Quantity.Id != findings.Practical.Findings.Key).Take(MostNotFound).Select(m => m.Why),
            texts.SharedFault,
        ])];

    /// <summary>Side by side, or one under the other where the letters are large.</summary>
    private static IEnumerable<PaperBlock> Beside(bool isLarge, IReadOnlyList<PaperBlock> left, IReadOnlyList<PaperBlock> right) =>
        isLarge ? [.. left, .. right] : [new PaperBlock.Beside(left, right, leftShare: 0.6)];

    private static IEnumerable<PaperBlock> Section(string heading, ListKind kind, IEnumerable<string> sentences)
    {
        Phrase[] items = [.. sentences.Select(s => Phrase.Of(Text.Together(s)))];
        return items.Length == 0 ? [] : [new PaperBlock.Heading(heading), new PaperBlock.Items(kind, items)];
    }

    /// <summary>The sentences of the conclusion about some topics, in the order of the conclusion.</summary>
    private static IEnumerable<string> About(ClassFindings findings, params ConclusionTopic[] topics) =>
        findings.Class.Sentences.Where(s => topics.Contains(s.Topic)).Select(s => Text.Together(s.Text));
}
