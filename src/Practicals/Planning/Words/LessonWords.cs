using System.Globalization;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning.Ways;

namespace Calx.Practicals.Planning.Words;

/// <summary>What is to be said of a plan's lesson, a sentence each.</summary>
internal static class LessonWords
{
    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(Plan plan)
    {
        LessonForecast lesson = plan.Lesson;
        string minutes = string.Create(CultureInfo.InvariantCulture, $"{plan.Settings.Minutes:0.#} min");
        string verdict = lesson.Verdict switch
        {
            "fits" => $"The lesson fits {minutes}",
            "tight" => $"The lesson is tight in {minutes}",
            _ => $"The lesson does not fit {minutes}",
        };
        double gasOff = plan.Settings.Practical.Classroom.GasOffInMinutes;
        string gas = gasOff > 0 ? string.Create(CultureInfo.InvariantCulture, $" and every flame out {gasOff:0.#} min before it") : "";
        yield return string.Create(
            CultureInfo.InvariantCulture,
            $"{verdict}. Everything done by the bell{gas}: {Odds.Times(lesson.Fits.Value, LessonForecast.FitsNot, LessonForecast.FitsWell)}. Half of such lessons take up to {lesson.P50:F0} min, nine in ten up to {lesson.P90:F0} min.");
        yield return lesson.Bottleneck.Sentence;
        if (plan.Fits && LastCall(plan) is string call)
        {
            yield return call;
        }

        if (lesson.Verdict != "fits" && plan.Ways is IReadOnlyList<PlanWay> ways)
        {
            yield return Nearest(ways);
        }
    }

    private static string? LastCall(Plan plan) => plan.Lesson.Calls.Heating switch
    {
        null => null,
        <= 0 => "No heating can start so late that a group is still done in time: the steps before it take too long.",
        double minute => string.Create(CultureInfo.InvariantCulture, $"Last heating starts by minute {minute:F0}: a group that begins then is done in time nine times in ten."),
    };

    private static string Nearest(IReadOnlyList<PlanWay> ways) => ways.Count == 0
        ? "No way was found to make it fit, not even with five changes together."
        : string.Create(
            CultureInfo.InvariantCulture,
            $"The nearest plan that {(ways[0].Fits.Value >= LessonForecast.FitsWell ? "fits" : "is at least tight")}: {string.Join("; ", ways[0].Changes)}. It is done in time {Odds.Times(ways[0].Fits.Value, LessonForecast.FitsNot, LessonForecast.FitsWell)}, and the class comes to its hardest conclusion {Odds.Times(ways[0].ClassRight)} (now {Odds.Times(ways[0].ClassRightNow)}).");
}
