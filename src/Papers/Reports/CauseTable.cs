using System.Globalization;
using System.Text;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;

namespace Calx.Papers.Reports;

/// <summary>What may have happened, group by group: the likeliest causes with bars as long as they are probable, and two
/// sentences for the teacher. Groups where all went as expected are only counted.</summary>
internal static class CauseTable
{
    private const int MostRows = 200;
    private const int MostCauses = 4;
    private const double LeastShown = 0.05;

    public static void Write(StringBuilder page, ClassFindings findings, GroupNames names, ReportTexts texts)
    {
        if (findings.Groups.All(g => g.Diagnosis is null))
        {
            return;
        }

        GroupFindings[] told = [.. findings.Groups.Where(IsTold).Take(MostRows)];
        page.Append(CultureInfo.InvariantCulture, $"<section>\n<h2 id=\"causes\">{Text.Own(texts.CausesHeading)}</h2>\n");
        foreach (SharedCause shared in findings.Class.SharedCauses)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p><strong>{Text.OfSentence(shared.Sentence)}</strong></p>\n");
        }

        int quiet = findings.Groups.Count(g => g.Diagnosis is not null && !IsTold(g));
        page.Append(CultureInfo.InvariantCulture, $"<p class=\"quiet\">{Text.Own(Quiet(quiet, findings.Groups.Count, texts))} {Text.Own(texts.CausesNote)}</p>\n");
        if (told.Length > 0)
        {
            page.Append("<div class=\"scroll\" tabindex=\"0\" role=\"region\" aria-labelledby=\"causes\"><table class=\"causes\">\n");
            ReportTable.WriteColumns(page, texts.GroupColumn, texts.CausesColumn, texts.ForTeacherColumn);
            foreach (GroupFindings group in told)
            {
                WriteGroup(page, names[group], group.Diagnosis!, texts);
            }

            page.Append("</tbody></table></div>\n");
        }

        page.Append("</section>\n");
    }

    /// <summary>A bar as long as the cause is probable; a picture, since a page may forbid widths written into it.</summary>
    private static string Bar(double probability) => string.Create(
        CultureInfo.InvariantCulture,
        $"<svg class=\"bar\" viewBox=\"0 0 100 1\" preserveAspectRatio=\"none\" aria-hidden=\"true\"><rect width=\"{100 * probability:F0}\" height=\"1\"/></svg>");

    private static string Quiet(int quiet, int all, ReportTexts texts) => quiet switch
    {
        0 => string.Empty,
        1 => texts.OneQuiet,
        _ when quiet == all => texts.AllQuiet,
        _ => texts.Quiet(quiet.ToString(CultureInfo.InvariantCulture)),
    };

    private static bool IsTold(GroupFindings group) =>
        group.Diagnosis is not null && (group.IsAnomalous || group.Diagnosis.First.Cause != Causes.AsExpected);

    private static void WriteGroup(StringBuilder page, string name, GroupDiagnosis diagnosis, ReportTexts texts)
    {
        page.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{Text.Of(name)}</th><td><ul>");
        foreach (CauseProbability cause in diagnosis.Causes.Take(MostCauses).Where(c => c.Probability >= LeastShown))
        {
            string label = cause.Cause == Causes.AsExpected ? texts.AllAsExpected : cause.Label;
            page.Append(CultureInfo.InvariantCulture, $"<li>{Bar(cause.Probability)}{texts.CausePercent(Text.Of(label), (100 * cause.Probability).ToString("F0", CultureInfo.InvariantCulture))}</li>");
        }

        page.Append(CultureInfo.InvariantCulture, $"</ul></td><td>{Text.OfSentence(diagnosis.ForTeacher)}</td></tr>\n");
    }
}
