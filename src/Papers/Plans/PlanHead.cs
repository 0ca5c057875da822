using System.Globalization;
using System.Text;
using Calx.Papers.Handouts;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.Papers.Plans;

/// <summary>The head of a plan: what is planned.</summary>
internal static class PlanHead
{
    public static void Write(StringBuilder page, Plan plan, ReportHeading? heading, bool draft, PaperLanguage language)
    {
        PlanTexts texts = new(language);
        page.Append("<header>\n");
        if (draft)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"invented\">{Text.Own(new SharedTexts(language).Draft)}</p>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"<p class=\"quiet\">{(heading is null ? Text.Own(texts.Plan) : texts.PlanFor(ReportPage.ClassAndDate(heading)))}</p>\n")
            .Append(CultureInfo.InvariantCulture, $"<h1>{Text.Of(plan.Settings.Practical.Title)}</h1>\n")
            .Append(CultureInfo.InvariantCulture, $"<p>{Text.Of(plan.Settings.Practical.Question)}</p>\n")
            .Append(CultureInfo.InvariantCulture, $"<p class=\"quiet\">{Text.OfSentence(Planned(plan.Settings, texts))}</p>\n</header>\n");
    }

    /// <summary>The plan in one line.</summary>
    private static string Planned(PlanSettings settings, PlanTexts texts)
    {
        string students = settings.Students == 1 ? texts.OneStudent : texts.Students(Sentences.Count(settings.Students));
        IEnumerable<string> parts =
        [
            settings.Groups == 1 ? texts.OneGroup(students) : texts.Groups(Sentences.Count(settings.Groups), students),
            texts.LessonMinutes(settings.Minutes.ToString("0.#", CultureInfo.InvariantCulture)),
            .. settings.InWords,
        ];
        return string.Join(" · ", parts);
    }
}
