using System.Globalization;
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
        string name = GroupNames.Of(findings, view ?? ReportView.Teacher).InSentence(middle);
        return Draw(findings.Practical, name, middle.Find(key)!, having.Length == 1 ? string.Empty : ", the group in the middle of the class");
    }

    private static Chart Draw(Practical practical, string groupName, QuantityEstimate estimate, string place)
    {
        ReadingContribution[] lines = [.. estimate.Budget.Where(line => line.Share >= 0.0005)];
        double height = 20 + (RowHeight * lines.Length);
        string description = string.Join("; ", lines.Select(line => $"{NameOf(practical, line)} {Percent(line)}"));
        var picture = new SvgPicture("budget-chart", Width, height, "Where the uncertainty comes from", $"{description}.");
        for (int i = 0; i < lines.Length; i++)
        {
            double y = 18 + (RowHeight * i);
            const double right = Width - 74;
            picture.Text(0, y, NameOf(practical, lines[i]));
            picture.Rectangle(0, y + 8, right, 12, "bar-rest");
            picture.Rectangle(0, y + 8, right * lines[i].Share, 12, "bar");
            picture.Text(right + 10, y + 19, Percent(lines[i]), "mark-label");
        }

        return new Chart(
            "Where the uncertainty comes from",
            picture,
            $"Share of the variance of the {estimate.Quantity.Label} of {groupName}, {estimate.Text}{place}. A reading that enters twice counts with both effects.");
    }

    private static string NameOf(Practical practical, ReadingContribution line) => ReadingNames.OfId(practical, line.Source);

    private static string Percent(ReadingContribution line) =>
        string.Create(CultureInfo.InvariantCulture, $"{100 * line.Share:0} %");
}
