using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Slips;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.Papers.Plans;

/// <summary>The head of a plan: what is planned.</summary>
internal static class PlanHead
{
    public static void Write(StringBuilder page, Plan plan, ReportHeading? heading, bool draft)
    {
        page.Append("<header>\n");
        if (draft)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"invented\">{RecordSlips.Draft}</p>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"<p class=\"quiet\">Plan{(heading is null ? string.Empty : $" · {ReportPage.ClassAndDate(heading)}")}</p>\n")
            .Append(CultureInfo.InvariantCulture, $"<h1>{Text.Of(plan.Settings.Practical.Title)}</h1>\n")
            .Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(plan.Settings.Practical.Question)}</p>\n")
            .Append(CultureInfo.InvariantCulture, $"<p class=\"quiet\">{Text.OfSentence(Planned(plan.Settings))}</p>\n</header>\n");
    }

    /// <summary>The plan in one line.</summary>
    private static string Planned(PlanSettings settings)
    {
        IEnumerable<string> parts =
        [
            Several(settings.Groups, "group") + string.Create(CultureInfo.InvariantCulture, $" ({Several(settings.Students, "student")})"),
            string.Create(CultureInfo.InvariantCulture, $"{settings.Minutes:0.#} min"),
            .. settings.InWords,
        ];
        return string.Join(" · ", parts);
    }

    private static string Several(int number, string one) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {one}{(number == 1 ? "" : "s")}");
}
