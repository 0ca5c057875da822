using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning.Words;

namespace Calx.Papers.Plans;

/// <summary>Whether a plan's lesson fits and shows anything, in large type, and the minutes to remember.</summary>
internal static class PlanVerdicts
{
    public static void Write(StringBuilder page, Plan plan)
    {
        page.Append("<div class=\"verdicts\">\n");
        WriteVerdict(page, plan.Lesson);
        WriteSureness(page, plan);
        page.Append("</div>\n");
        WriteFigures(page, plan);
    }

    private static void WriteVerdict(StringBuilder page, LessonForecast lesson)
    {
        (string role, string word) = lesson.Verdict switch
        {
            "fits" => ("fits", "Fits"),
            "tight" => ("tight", "Tight"),
            _ => ("does-not-fit", "Does not fit"),
        };
        string said = string.Create(CultureInfo.InvariantCulture, $"{lesson.Settings.Minutes:0.#}\u00a0min: done in time {Odds.Times(lesson.Fits.Value, LessonForecast.FitsNot, LessonForecast.FitsWell)}");
        Verdict(page, role, word, said);
    }

    /// <summary>A lesson that ends in time and shows nothing is no good either.</summary>
    private static void WriteSureness(StringBuilder page, Plan plan)
    {
        AmountPoint planned = plan.Amounts.Planned;
        string grams = string.Create(CultureInfo.InvariantCulture, $"{planned.SampleInGrams:0.######}\u00a0g");
        string right = $"{grams}: the hardest conclusion is reached {Odds.Times(planned.ClassRight)}";
        bool sure = planned.ClassRight >= AmountAdvice.Sure && planned.ClassWrong <= AmountAdvice.Astray;
        if (!plan.CanConclude)
        {
            Verdict(page, "does-not-fit", "Cannot conclude", "a reading is missing from the table");
        }
        else if (planned.Chances.Count > 0)
        {
            string word = sure ? "Enough" : planned.SampleInGrams < plan.Amounts.Smallest?.SampleInGrams ? "Too little" : "Not sure enough";
            Verdict(page, sure ? "fits" : "tight", word, right);
        }
    }

    private static void Verdict(StringBuilder page, string role, string word, string said) => page.Append(
        CultureInfo.InvariantCulture, $"<p class=\"verdict {role}\"><strong>{word}</strong> <span>{Text.Of(said)}</span></p>\n");

    private static void WriteFigures(StringBuilder page, Plan plan)
    {
        LessonForecast lesson = plan.Lesson;
        page.Append("<dl class=\"figures\">\n");
        ReportPage.Figure(page, "half of such lessons end by", Minute(lesson.P50));
        ReportPage.Figure(page, "nine in ten end by", Minute(lesson.P90));
        if (plan.Fits && lesson.Calls.Heating is > 0 and double heating)
        {
            ReportPage.Figure(page, "last heating starts by", Minute(heating));
        }

        if (plan.CanConclude && plan.Amounts.Smallest is AmountPoint smallest)
        {
            ReportPage.Figure(page, "smallest sample that is enough", string.Create(CultureInfo.InvariantCulture, $"{smallest.SampleInGrams:0.######} g"));
        }

        page.Append("</dl>\n");
    }

    private static string Minute(double minute) => string.Create(CultureInfo.InvariantCulture, $"minute {minute:F0}");
}
