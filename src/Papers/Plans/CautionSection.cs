using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Papers.Plans;

/// <summary>What keeps the lesson safe, and who decides about it.</summary>
internal static class CautionSection
{
    public static void Write(StringBuilder page, PlanSettings settings, PaperLanguage language)
    {
        PlanTexts texts = new(language);
        Practical practical = settings.Practical;
        page.Append("<div class=\"caution\">\n");
        var table = new ReportTable("cautions", texts.CautionsHeading, (texts.OfColumn, false), (texts.HarmColumn, false), (texts.ControlColumn, false));
        foreach (Hazard hazard in practical.Hazards)
        {
            table.Add(hazard.Of, hazard.Harm, hazard.Control);
        }

        table.Write(page);
        page.Append(CultureInfo.InvariantCulture, $"<p><strong>{new SharedTexts(language).Sentence(Text.OfSentence(Largest(practical.Limits, texts)))}</strong></p>\n");
        double gasOff = practical.Classroom.GasOffInMinutes;
        if (gasOff > 0 && gasOff < settings.Minutes)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p><strong>{Text.Own(texts.GasOff(Minutes(settings.Minutes - gasOff), Minutes(gasOff)))}</strong></p>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"<p><strong>{Text.Own(texts.RulesDecide)}</strong> {Text.Own(texts.NoReplacement)}</p>\n</div>\n");
    }

    private static string Minutes(double minutes) => minutes.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Largest(AmountLimits limits, PlanTexts texts)
    {
        string largest = limits.LargestSample.ToString("0.######", CultureInfo.InvariantCulture);
        return limits.Note is string note ? texts.LargestWithNote(largest, limits.Unit, note) : texts.Largest(largest, limits.Unit);
    }
}
