using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Texts;
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
    /// <param name="heading">What stands at its head, and in which language it is.</param>
    /// <param name="view">For whom; null for the teacher.</param>
    /// <returns>A whole HTML document; the same bytes for the same findings, heading and view.</returns>
    public static string Html(ClassFindings findings, ReportHeading heading, ReportView? view = null)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(heading);
        var page = new StringBuilder();
        ReportPage.Begin(page, findings.Practical.Title, heading.ClassName, heading.Language);
        WriteHead(page, findings, heading);
        WriteSections(page, findings, (view ?? ReportView.Teacher) with { Language = heading.Language.For(findings.Practical) });
        ReportPage.End(page);
        return page.ToString();
    }

    /// <summary>What stands under the report's head, as parts of another page: it has a title of its own, so the headings here
    /// begin with h2. No element carries a style; the page brings <see cref="ReportStyle.ScreenSheet"/> and puts this into an
    /// element of class <c>report</c>.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="view">For whom.</param>
    /// <returns>HTML, safe to place whatever was written in the class's table. Ids in it: <c>talking</c>, <c>causes</c>, <c>groups</c>,
    /// <c>columns</c>, <c>rejected</c>, and those of charts, which end in <c>-t</c> and <c>-d</c>.</returns>
    public static string Sections(ClassFindings findings, ReportView view)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(view);
        var page = new StringBuilder();
        WriteSections(page, findings, view);
        return page.ToString();
    }

    private static void WriteSections(StringBuilder page, ClassFindings findings, ReportView view)
    {
        ReportTexts texts = new(view.Language);
        ReportPage.Sentences(page, Conclusion(findings.Class, view));
        WriteFigures(page, findings, view, texts);
        WriteCharts(page, findings, view, texts);
        TalkingSection.Write(page, findings, view, texts);
        if (view.Causes)
        {
            CauseTable.Write(page, findings, GroupNames.Of(findings, view), texts);
        }

        new GroupTable(findings, view).Write(page);
        CurveTable.Write(page, findings, view);
        ReadingTables.Write(page, findings, view, texts);
        WriteMethods(page, texts);
    }

    private static IEnumerable<string> Conclusion(ClassResult result, ReportView view) => result.Sentences
        .Where(s => (view.Causes || !s.MentionsOdd) && (view.Accepted || !s.TellsAccepted))
        .Select(s => view.Names ? s.Text : s.WithoutNames);

    private static void WriteHead(StringBuilder page, ClassFindings findings, ReportHeading heading)
    {
        ReportTexts texts = new(heading.Language);
        page.Append("<header>\n");
        if (heading.InventedData)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"invented\">{Text.Own(texts.Invented)}</p>\n");
        }

        if (findings.Readings.IsSimulated)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"invented\">{Text.Own(texts.Simulated)}</p>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"<h1>{Text.Of(findings.Practical.Title)}</h1>\n")
            .Append(CultureInfo.InvariantCulture, $"<p class=\"quiet\">{ReportPage.ClassAndDate(heading)}</p>\n")
            .Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(findings.Practical.Question)}</p>\n</header>\n");
    }

    private static void WriteFigures(StringBuilder page, ClassFindings findings, ReportView view, ReportTexts texts)
    {
        ClassQuantity? key = findings.Class.Find(findings.Practical.Findings.Key);
        page.Append("<dl class=\"figures\">\n");
        if (key is not null)
        {
            ReportPage.Figure(page, key.Quantity.Label, key.Text + key.Quantity.UnitBehind);
        }

        if (view.Accepted && findings.Class.Accepted is AcceptedResult.Compared compared)
        {
            ReportPage.Figure(page, texts.AcceptedValue, Shown.Accepted(compared) + compared.Value.Quantity.UnitBehind);
        }

        int odd = findings.Groups.Count(g => g.IsAnomalous);
        ReportPage.Figure(page, texts.GroupsInValue, (key?.Count ?? findings.Groups.Count - odd).ToString(CultureInfo.InvariantCulture));
        if (view.Causes)
        {
            ReportPage.Figure(page, texts.OddGroups, odd.ToString(CultureInfo.InvariantCulture));
        }

        page.Append("</dl>\n");
    }

    private static void WriteCharts(StringBuilder page, ClassFindings findings, ReportView view, ReportTexts texts)
    {
        Chart?[] all =
        [
            RatioChart.Of(findings, view), SeriesChart.Of(findings, view), SampleChart.Of(findings, view), StepsChart.Of(findings, view), BudgetChart.Of(findings, view),
        ];
        Chart[] charts = [.. all.OfType<Chart>()];
        if (charts.Length == 0)
        {
            return;
        }

        page.Append(CultureInfo.InvariantCulture, $"<h2>{Text.Own(texts.PicturesHeading)}</h2>\n");
        ReportPage.Charts(page, charts);
    }

    private static void WriteMethods(StringBuilder page, ReportTexts texts) => page
        .Append(CultureInfo.InvariantCulture, $"<h2>{Text.Own(texts.MethodsHeading)}</h2>\n")
        .Append(CultureInfo.InvariantCulture, $"<p>{Text.Own(texts.Methods)}</p>\n");
}
