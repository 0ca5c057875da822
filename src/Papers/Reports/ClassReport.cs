using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Practicals.Findings;

namespace Calx.Papers.Reports;

/// <summary>
/// A class's findings as one HTML file that needs nothing else: no script, no request, its font inside. Words come
/// before charts, and the tables behind them last.
/// </summary>
public static class ClassReport
{
    /// <summary>Writes the report.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="heading">What stands at its head.</param>
    /// <returns>A whole HTML document; the same bytes for the same findings and heading.</returns>
    public static string Html(ClassFindings findings, ReportHeading heading)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(heading);
        var page = new StringBuilder();
        ReportPage.Begin(page, findings.Practical.Title, heading.ClassName);
        WriteHead(page, findings, heading);
        WriteFigures(page, findings);
        WriteCharts(page, findings);
        CauseTable.Write(page, findings);
        GroupTable.Write(page, findings);
        ReadingTables.Write(page, findings);
        WriteMethods(page);
        ReportPage.End(page);
        return page.ToString();
    }

    private static void WriteHead(StringBuilder page, ClassFindings findings, ReportHeading heading)
    {
        page.Append("<header>\n");
        if (heading.InventedData)
        {
            page.Append("<p class=\"invented\">Invented data: no such class, no such readings</p>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"<h1>{Text.Of(findings.Practical.Title)}</h1>\n")
            .Append(CultureInfo.InvariantCulture, $"<p class=\"quiet\">{ReportPage.ClassAndDate(heading)}</p>\n")
            .Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(findings.Practical.Question)}</p>\n</header>\n");
        ReportPage.Sentences(page, findings.Class.Conclusion);
    }

    private static void WriteFigures(StringBuilder page, ClassFindings findings)
    {
        ClassQuantity? key = findings.Class.Find(findings.Practical.Findings.Key);
        page.Append("<dl class=\"figures\">\n");
        if (key is not null)
        {
            ReportPage.Figure(page, key.Quantity.Label, key.Text + key.Quantity.UnitBehind);
        }

        if (findings.Class.Accepted is AcceptedResult.Compared compared)
        {
            ReportPage.Figure(page, "accepted value", Shown.Accepted(compared) + compared.Value.Quantity.UnitBehind);
        }

        int odd = findings.Groups.Count(g => g.IsAnomalous);
        ReportPage.Figure(page, "groups in the class's value", (key?.Count ?? findings.Groups.Count - odd).ToString(CultureInfo.InvariantCulture));
        ReportPage.Figure(page, "groups with an odd result", odd.ToString(CultureInfo.InvariantCulture));
        page.Append("</dl>\n");
    }

    private static void WriteCharts(StringBuilder page, ClassFindings findings)
    {
        Chart[] charts = [.. ((Chart?[])[RatioChart.Of(findings), SampleChart.Of(findings), StepsChart.Of(findings), BudgetChart.Of(findings)]).OfType<Chart>()];
        if (charts.Length == 0)
        {
            return;
        }

        page.Append("<h2>In pictures</h2>\n");
        ReportPage.Charts(page, charts);
    }

    private static void WriteMethods(StringBuilder page) => page.Append(
        """
        <h2>How this was worked out</h2>
        <p>A reading carries the rounding of the display and the scatter of the balance; a quantity computed from readings
        carries them on by the law of propagation of uncertainty (JCGM 100), a reading that enters twice counting once with
        both effects. The 95 % interval of a group does not take the formula to be straight (for a ratio it is Fieller's).
        The class's value is a weighted mean that allows for spread between groups (restricted maximum likelihood, standard
        uncertainty after Knapp and Hartung, Student's t). An odd result lies more than 3.5 robust standard deviations from
        the median, or cannot be. The line takes account of uncertainty in both directions (York). None of this covers a
        fault that all groups share.</p>

        """);
}
