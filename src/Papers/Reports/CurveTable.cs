using System.Globalization;
using System.Text;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

namespace Calx.Papers.Reports;

/// <summary>The report's table of curves: what mass against time gives for each group and the class, and points to look at.</summary>
internal static class CurveTable
{
    private const int MostRows = 500;

    public static void Write(StringBuilder page, ClassFindings findings, ReportView view)
    {
        if (findings.Practical.Series is not SeriesDefinition series || findings.Class.Curve is not ClassCurve pooled)
        {
            return;
        }

        ReportTexts texts = new(view.Language);
        GroupNames names = GroupNames.Of(findings, view);
        page.Append("<section>\n")
            .Append(CultureInfo.InvariantCulture, $"<h2 id=\"curves\">{Text.Own(texts.CurvesHeading)}</h2>\n<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-labelledby=\"curves\"><table class=\"groups\">\n")
            .Append(CultureInfo.InvariantCulture, $"<caption>{Text.Own(texts.CurvesNote)}</caption>\n")
            .Append(CultureInfo.InvariantCulture, $"<thead><tr><th scope=\"col\">{Text.Own(texts.GroupColumn)}</th><th scope=\"col\" class=\"n\">{Text.Own(texts.PointsColumn)}</th>");
        foreach (CurveQuantityDefinition quantity in series.Quantities)
        {
            page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\" class=\"n\">{Text.Of($"{quantity.Label}\u00a0/\u00a0{quantity.Unit}")}</th>");
        }

        page.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\" class=\"words\">{Text.Own(texts.OrderColumn)}</th></tr></thead>\n<tbody>\n");
        foreach (GroupFindings group in findings.Groups.Take(MostRows))
        {
            int points = group.Readings.Series?.Points.Count ?? 0;
            Row(page, Text.Of(names[group]), points.ToString(CultureInfo.InvariantCulture), series, q => group.Curve?.Find(q.Id)?.Text, CurveLines.OrderOf(group, findings));
        }

        Row(page, Text.Own(texts.WholeClass), string.Empty, series, q => pooled.Find(q.Id)?.Text, string.Empty);
        page.Append("</tbody></table></div>\n");
        if (view is { Causes: true, Names: true })
        {
            Lines(page, [.. CurveLines.Of(findings)]);
        }

        page.Append("</section>\n");
    }

    private static void Row(
        StringBuilder page, string name, string points, SeriesDefinition series, Func<CurveQuantityDefinition, string?> value, string order)
    {
        page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{name}</th><td class=\"n\">{points}</td>");
        foreach (CurveQuantityDefinition quantity in series.Quantities)
        {
            page.Append(CultureInfo.InvariantCulture, $"<td class=\"n\">{Text.Of(value(quantity) ?? "–")}</td>");
        }

        page.Append(CultureInfo.InvariantCulture, $"<td class=\"words\">{Text.Of(order)}</td></tr>\n");
    }

    private static void Lines(StringBuilder page, string[] lines)
    {
        if (lines.Length == 0)
        {
            return;
        }

        page.Append("<ul>\n");
        foreach (string line in lines)
        {
            page.Append(CultureInfo.InvariantCulture, $"<li>{Text.OfSentence(line)}</li>\n");
        }

        page.Append("</ul>\n");
    }
}
