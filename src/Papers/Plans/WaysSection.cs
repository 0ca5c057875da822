using System.Text;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Ways;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>What else could be done where the lesson does not fit well.</summary>
internal static class WaysSection
{
    public static void Write(StringBuilder page, Plan plan)
    {
        if (plan.Ways is not { Count: > 0 } ways)
        {
            return;
        }

        var table = new ReportTable(
            "ways", "Ways out",
            ("together, with what each costs", false), ("done in time", true), ("class concludes: now", true), ("class concludes: then", true));
        table.Under("Times in 100; the class's hardest conclusion. The first way asks least of people and of the conclusion.");
        foreach (PlanWay way in ways)
        {
            table.AddNoted(
                way.Changes.Zip(way.Costs),
                Odds.InHundred(way.Fits.Value, LessonForecast.FitsNot, LessonForecast.FitsWell), Odds.InHundred(way.ClassRightNow), Odds.InHundred(way.ClassRight));
        }

        table.Write(page);
    }
}
