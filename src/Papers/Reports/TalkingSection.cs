using System.Globalization;
using System.Text;
using Calx.Papers.Texts;
using Calx.Practicals.Findings;

namespace Calx.Papers.Reports;

/// <summary>What is worth talking about, as a list.</summary>
internal static class TalkingSection
{
    public static void Write(StringBuilder page, ClassFindings findings, ReportView view, ReportTexts texts)
    {
        TalkingPoint[] points = [.. TalkingPoints.Of(findings)
            .Where(p => (view.Causes || !p.MentionsOdd) && (view.Accepted || !p.TellsAccepted))];
        page.Append(CultureInfo.InvariantCulture, $"<h2 id=\"talking\">{Text.Own(texts.TalkingHeading)}</h2>\n<ol class=\"talking\">\n");
        foreach (TalkingPoint point in points)
        {
            page.Append(CultureInfo.InvariantCulture, $"<li>{Text.OfSentence(view.Names ? point.Text : point.WithoutNames)}</li>\n");
        }

        page.Append("</ol>\n");
    }
}
