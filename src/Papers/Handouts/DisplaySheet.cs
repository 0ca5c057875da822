using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Findings;

namespace Calx.Papers.Handouts;

/// <summary>A sheet to hang up after the lesson: the question, the class's result in large type, a dot a group, and what the class can say.
/// No name, no cause, and no group can be told from another. One side; its letters have 22 point and more, on A3 31.</summary>
public static class DisplaySheet
{
    /// <summary>From margin to margin of A4.</summary>
    private const double WidthOfChart = 178;

    /// <summary>Curves are higher than dots: they leave room at the sides.</summary>
    private const double ShareOfCurves = 0.75;

    /// <summary>Makes it.</summary>
    /// <param name="setting">The lesson. That the practical still has to be checked is not said: nothing is to be done from this sheet.</param>
    /// <param name="outcome">What the class found.</param>
    public static Paper Of(PaperSetting setting, ClassOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(setting);
        ArgumentNullException.ThrowIfNull(outcome);
        ClassReportTexts texts = new(setting.Language);
        ClassFindings findings = outcome.Findings;
        PaperLook look = setting.Look.ForWall();
        ClassQuantity? key = findings.Class.Find(findings.Practical.Findings.Key);
        IReadOnlyList<string> said = InShort.Of(findings, outcome.ShowsAccepted);
        double room = Room(look, outcome.Label(texts) is not null, outcome.ShowsAccepted, said.Count);
        PaperBlock[] content =
        [
            .. ReportSheet.Label(outcome, texts),
            .. key is null ? [] : (PaperBlock[])
            [
                new PaperBlock.Paragraph(key.Text + key.Quantity.UnitBehind, ParagraphLook.Huge),
                new PaperBlock.Paragraph(key.Quantity.Label),
            ],
            .. Picture(findings, key, outcome, room, setting),
            new PaperBlock.Items(ListKind.Bullets, [.. said.Select(s => Phrase.Of(Text.Together(s)))]),
        ];
        return new Paper("wall-display", findings.Practical.Question, setting.Heads(texts.DisplayKind) with { Draft = null }, content, look);
    }

    /// <summary>The curves where mass is read against time, else a dot a group.</summary>
    private static IEnumerable<PaperBlock> Picture(ClassFindings findings, ClassQuantity? key, ClassOutcome outcome, double room, PaperSetting setting)
    {
        double width = WidthOfChart * setting.Look.ForWall().WallScale;
        var view = new ReportView(Causes: false, outcome.ShowsAccepted, Names: false) { Language = setting.Language };
        if (SeriesChart.Of(findings, view, ChartSize.Half) is Chart curves)
        {
            return [new PaperBlock.Figure(curves.Picture, curves.Caption, ShareOfCurves * width)];
        }

        string shown = key is null ? findings.Practical.Findings.Change : key.Quantity.Id;
        return DotsChart.Of(findings, shown, outcome.ShowsAccepted, room, setting.Language) is Chart dots
            ? [new PaperBlock.Figure(dots.Picture, dots.Caption, width)] : [];
    }

    /// <summary>How high the dots may stand: what the sheet has once all is said that has to be. A unit is some 0.5 mm, a sentence of two lines
    /// 36 of them.</summary>
    private static double Room(PaperLook look, bool hasLabel, bool showsAccepted, int sentences)
    {
        double taken = (36 * Math.Max(0, sentences - 2)) + (hasLabel ? 24 : 0) + (look.Size == SheetSize.Letter ? 36 : 0) + (showsAccepted ? 24 : 0);
        return Math.Clamp(144 - taken, 36, 144);
    }
}
