using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Ways;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>What else could be done where the lesson does not fit well.</summary>
internal static class WaysSection
{
    public static void Write(StringBuilder page, Plan plan, PlanTexts texts)
    {
        if (plan.Ways is not { Count: > 0 } ways)
        {
            return;
        }

        var table = new ReportTable(
            "ways", texts.WaysHeading,
            (texts.WayColumn, false), (texts.InTimeColumn, true), (texts.ConcludesNowColumn, true), (texts.ConcludesThenColumn, true));
        table.Under(texts.WaysNote);
        foreach (PlanWay way in ways)
        {
            table.AddNoted(
                way.Changes.Zip(way.Costs),
                Odds.InHundred(way.Fits.Value, LessonForecast.FitsNot, LessonForecast.FitsWell), Odds.InHundred(way.ClassRightNow), Odds.InHundred(way.ClassRight));
        }

        table.Write(page);
    }
}
