using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Plans;

/// <summary>What keeps the lesson safe, and who decides about it.</summary>
internal static class CautionSection
{
    public static void Write(StringBuilder page, PlanSettings settings)
    {
        Practical practical = settings.Practical;
        page.Append("<div class=\"caution\">\n");
        var table = new ReportTable("cautions", "Cautions", ("of", false), ("what can happen", false), ("what is done about it", false));
        foreach (Hazard hazard in practical.Hazards)
        {
            table.Add(hazard.Of, hazard.Harm, hazard.Control);
        }

        table.Write(page);
        string note = practical.Limits.Note is string said ? $": {said}" : string.Empty;
        page.Append(CultureInfo.InvariantCulture, $"<p><strong>{Text.OfSentence(Largest(practical.Limits) + note)}.</strong></p>\n");
        double gasOff = practical.Classroom.GasOffInMinutes;
        if (gasOff > 0 && gasOff < settings.Minutes)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p><strong>Gas off by minute {settings.Minutes - gasOff:0.#}, {gasOff:0.#}\u00a0min before the bell.</strong></p>\n");
        }

        page.Append("<p><strong>Your employer’s risk assessment and local rules decide.</strong> This page does not replace them; somebody competent who knows the class and the room checks the plan and tries it out first.</p>\n</div>\n");
    }

    private static string Largest(AmountLimits limits) =>
        string.Create(CultureInfo.InvariantCulture, $"No group takes more than {limits.LargestSample:0.######} {limits.Unit}");
}
