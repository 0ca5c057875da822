using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;

namespace Calx.Papers.Plans;

/// <summary>How the lesson goes: how long groups wait for what they share, and two lessons in pictures.</summary>
internal static class LessonSection
{
    public static void Write(StringBuilder page, LessonForecast lesson)
    {
        WriteWaiting(page, lesson);
        page.Append("<h2>How the lesson goes</h2>\n");
        ReportPage.Charts(page, [TimelineChart.Typical(lesson), TimelineChart.Bad(lesson)], "charts-wide");
    }

    private static void WriteWaiting(StringBuilder page, LessonForecast lesson)
    {
        if (lesson.Uses.Count == 0)
        {
            return;
        }

        var table = new ReportTable(
            "waiting", "Waiting", ("shared by the groups", false), ("how many", true),
            ("a group waits in a lesson / min", true), ("longest wait on end / min", true), ("in use / % of the lesson", true));
        foreach (ThingUse use in lesson.Uses)
        {
            table.Add(
                use.Thing.Label,
                use.Thing.Units.ToString(CultureInfo.InvariantCulture),
                string.Create(CultureInfo.InvariantCulture, $"{use.MeanWait:F1}"),
                string.Create(CultureInfo.InvariantCulture, $"{use.LongestWait:F1}"),
                string.Create(CultureInfo.InvariantCulture, $"{100 * use.Use:F0}"));
        }

        table.Under("Means over all simulated lessons.").Write(page);
    }
}
