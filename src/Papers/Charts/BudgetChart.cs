using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Readings;
using Calx.Papers.Reports;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;

namespace Calx.Papers.Charts;

/// <summary>Which reading the uncertainty of the key quantity comes from, for the group in the middle of the class.</summary>
public static class BudgetChart
{
    private const double Width = 620;
    private const double RowHeight = 46;

    /// <summary>Draws it, or returns null where no group gives the key quantity.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    public static Chart? Of(ClassFindings findings, ReportView? view = null)
    {
        ArgumentNullException.ThrowIfNull(findings);
        string key = findings.Practical.Findings.Key;
        GroupFindings[] having = [.. Shown.Core([.. findings.Groups.Where(g => g.Find(key) is not null)]).OrderBy(g => g.Find(key)!.Value)];
        if (having.Length == 0)
        {
            return null;
        }

        GroupFindings middle = having[having.Length / 2];
        ReportView shown = view ?? ReportView.Teacher;
        ChartTexts texts = new(shown.Language);
        string name = GroupNames.Of(findings, shown).InSentence(middle);
        QuantityEstimate estimate = middle.Find(key)!;
        string caption = having.Length == 1
            ? texts.Budget(estimate.Quantity.Label, name, estimate.Text) : texts.BudgetOfMiddle(estimate.Quantity.Label, name, estimate.Text);
        return Draw(findings.Practical, estimate, caption, texts);
    }

    private static Chart Draw(Practical practical, QuantityEstimate estimate, string caption, ChartTexts texts)
    {
        ReadingContribution[] lines = [.. estimate.Budget.Where(line => line.Share >= 0.0005)];
        double height = 20 + (RowHeight * lines.Length);
        string description = string.Join("; ", lines.Select(line => $"{NameOf(practical, line, texts)} {Percent(line, texts)}"));
        var picture = new SvgPicture("budget-chart", Width, height, texts.BudgetHeading, $"{description}.");
        for (int i = 0; i < lines.Length; i++)
        {
            double y = 18 + (RowHeight * i);
            const double right = Width - 74;
            picture.Text(0, y, NameOf(practical, lines[i], texts));
            picture.Rectangle(0, y + 8, right, 12, "bar-rest");
            picture.Rectangle(0, y + 8, right * lines[i].Share, 12, "bar");
            picture.Text(right + 10, y + 19, Percent(lines[i], texts), "mark-label");
        }

        return new Chart(texts.BudgetHeading, picture, caption);
    }

    private static string NameOf(Practical practical, ReadingContribution line, ChartTexts texts) =>
        practical.Gauges.FirstOrDefault(g => line.Source == ReadingContribution.ScaleOf(g.Id)) is Gauge scale ? texts.BudgetScale(scale.Label)
        : practical.Gauges.FirstOrDefault(g => line.Source == ReadingContribution.InstrumentOf(g.Id)) is Gauge shift ? texts.BudgetShift(shift.Label)
        : ReadingNames.OfId(practical, line.Source);

    private static string Percent(ReadingContribution line, ChartTexts texts) =>
        texts.Percent((100 * line.Share).ToString("0", CultureInfo.InvariantCulture));
}
