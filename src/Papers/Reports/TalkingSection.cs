using System.Globalization;
using System.Text;
using Calx.Practicals.Findings;

namespace Calx.Papers.Reports;

/// <summary>What is worth talking about, as a list.</summary>
internal static class TalkingSection
{
    public static void Write(StringBuilder page, ClassFindings findings, ReportView view)
    {
        TalkingPoint[] points = [.. TalkingPoints.Of(findings)
            .Where(p => (view.Causes || !p.MentionsOdd) && (view.Accepted || !p.TellsAccepted))];
        page.Append("<h2 id=\"talking\">To talk about</h2>\n<ol class=\"talking\">\n");
        foreach (TalkingPoint point in points)
        {
            page.Append(CultureInfo.InvariantCulture, $"<li>{Text.OfSentence(view.Names ? point.Text : point.WithoutNames)}</li>\n");
        }

        page.Append("</ol>\n");
    }
}
