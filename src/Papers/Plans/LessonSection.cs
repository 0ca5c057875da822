using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;

namespace Calx.Papers.Plans;

/// <summary>How the lesson goes: how long groups wait for what they share, and two lessons in pictures.</summary>
internal static class LessonSection
{
    public static void Write(StringBuilder page, LessonForecast lesson, PaperLanguage language)
    {
        PlanTexts texts = new(language);
        WriteWaiting(page, lesson, texts);
        page.Append(CultureInfo.InvariantCulture, $"<h2>{Text.Own(texts.LessonHeading)}</h2>\n");
        ReportPage.Charts(page, [TimelineChart.Typical(lesson, language), TimelineChart.Bad(lesson, language)], "charts-wide");
    }

    private static void WriteWaiting(StringBuilder page, LessonForecast lesson, PlanTexts texts)
    {
        if (lesson.Uses.Count == 0)
        {
            return;
        }

        var table = new ReportTable(
            "waiting", texts.WaitingHeading, (texts.SharedColumn, false), (texts.ManyColumn, true),
            (texts.MeanWaitColumn, true), (texts.LongestWaitColumn, true), (texts.UseColumn, true));
        foreach (ThingUse use in lesson.Uses)
        {
            table.Add(
                use.Thing.Label,
                use.Thing.Units.ToString(CultureInfo.InvariantCulture),
                string.Create(CultureInfo.InvariantCulture, $"{use.MeanWait:F1}"),
                string.Create(CultureInfo.InvariantCulture, $"{use.LongestWait:F1}"),
                string.Create(CultureInfo.InvariantCulture, $"{100 * use.Use:F0}"));
        }

        table.Under(texts.WaitingNote).Write(page);
    }
}
