using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>Whether a plan's lesson fits and shows anything, in large type, and the minutes to remember.</summary>
internal static class PlanVerdicts
{
    public static void Write(StringBuilder page, Plan plan, PlanTexts texts)
    {
        page.Append("<div class=\"verdicts\">\n");
        WriteVerdict(page, plan.Lesson, texts);
        WriteSureness(page, plan, texts);
        page.Append("</div>\n");
        WriteFigures(page, plan, texts);
    }

    private static void WriteVerdict(StringBuilder page, LessonForecast lesson, PlanTexts texts)
    {
        (string role, string word) = lesson.Verdict switch
        {
            "fits" => ("fits", texts.Fits),
            "tight" => ("tight", texts.Tight),
            _ => ("does-not-fit", texts.FitsNot),
        };
        string said = texts.DoneInTime(
            lesson.Settings.Minutes.ToString("0.#", CultureInfo.InvariantCulture), Odds.Times(lesson.Fits.Value, lesson.Settings.Language, LessonForecast.FitsNot, LessonForecast.FitsWell));
        Verdict(page, role, word, said);
    }

    /// <summary>A lesson that ends in time and shows nothing is no good either.</summary>
    private static void WriteSureness(StringBuilder page, Plan plan, PlanTexts texts)
    {
        AmountPoint planned = plan.Amounts.Planned;
        string often = Odds.Times(planned.ClassRight, plan.Settings.Language);
        string right = plan.Settings.Practical.Amounts is null ? texts.HardestConclusionUsual(often)
            : texts.HardestConclusion(planned.SampleInGrams.ToString("0.######", CultureInfo.InvariantCulture), often);
        bool sure = planned.ClassRight >= AmountAdvice.Sure && planned.ClassWrong <= AmountAdvice.Astray;
        if (!plan.CanConclude)
        {
            Verdict(page, "does-not-fit", texts.CannotConclude, texts.ReadingMissing);
        }
        else if (planned.Chances.Count > 0)
        {
            string word = sure ? texts.Enough : planned.SampleInGrams < plan.Amounts.Smallest?.SampleInGrams ? texts.TooLittle : texts.NotSure;
            Verdict(page, sure ? "fits" : "tight", word, right);
        }
    }

    private static void Verdict(StringBuilder page, string role, string word, string said) => page.Append(
        CultureInfo.InvariantCulture, $"<p class=\"verdict {role}\"><strong>{Text.Own(word)}</strong> <span>{Text.Of(said)}</span></p>\n");

    private static void WriteFigures(StringBuilder page, Plan plan, PlanTexts texts)
    {
        LessonForecast lesson = plan.Lesson;
        page.Append("<dl class=\"figures\">\n");
        ReportPage.Figure(page, texts.HalfEndBy, Minute(lesson.P50, texts));
        ReportPage.Figure(page, texts.NineInTenEndBy, Minute(lesson.P90, texts));
        if (plan.Fits && lesson.Calls.Heating is > 0 and double heating)
        {
            ReportPage.Figure(page, texts.LastHeatingBy, Minute(heating, texts));
        }

        if (plan.CanConclude && plan.Amounts.Smallest is AmountPoint smallest)
        {
            ReportPage.Figure(page, texts.SmallestEnough, texts.Grams(smallest.SampleInGrams.ToString("0.######", CultureInfo.InvariantCulture)));
        }

        page.Append("</dl>\n");
    }

    private static string Minute(double minute, PlanTexts texts) => texts.Minute(minute.ToString("F0", CultureInfo.InvariantCulture));
}
