using Calx.Practicals.Clock;
using Calx.Practicals.Planning.Ways;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Planning.Words;

/// <summary>What is to be said of a plan's lesson, a sentence each.</summary>
internal static class LessonWords
{
    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(Plan plan)
    {
        LessonForecast lesson = plan.Lesson;
        var texts = new LessonTexts(plan.Settings.Language);
        string minutes = plan.Settings.Minutes.InFigures("0.#");
        string verdict = lesson.Verdict switch
        {
            "fits" => texts.Fits(minutes),
            "tight" => texts.Tight(minutes),
            _ => texts.DoesNotFit(minutes),
        };
        double gasOff = plan.Settings.Practical.Classroom.GasOffInMinutes;
        string odds = Odds.Times(lesson.Fits.Value, plan.Settings.Language, LessonForecast.FitsNot, LessonForecast.FitsWell);
        string done = gasOff > 0 ? texts.DoneAndFlameOut(gasOff.InFigures("0.#"), odds) : texts.DoneByBell(odds);
        yield return $"{verdict} {done} {texts.HalfTake(lesson.P50.InFigures("F0"), lesson.P90.InFigures("F0"))}";
        yield return lesson.Bottleneck.Sentence;
        if (plan.Fits && LastCall(plan, texts) is string call)
        {
            yield return call;
        }

        if (lesson.Verdict != "fits" && plan.Ways is IReadOnlyList<PlanWay> ways)
        {
            yield return ways.Count == 0 ? texts.NoWay : Nearest(ways[0], plan.Settings.Language, texts);
        }
    }

    private static string? LastCall(Plan plan, LessonTexts texts) => plan.Lesson.Calls.Heating switch
    {
        null => null,
        <= 0 => texts.NoHeatingInTime,
        double minute => texts.LastHeating(minute.InFigures("F0")),
    };

    private static string Nearest(PlanWay way, EngineLanguage language, LessonTexts texts)
    {
        Func<string, string, string, string, string> said = way.Fits.Value >= LessonForecast.FitsWell ? texts.NearestFits : texts.NearestTight;
        return said(
            new Wording(language).LongList(way.Changes),
            Odds.Times(way.Fits.Value, language, LessonForecast.FitsNot, LessonForecast.FitsWell),
            Odds.Times(way.ClassRight, language),
            Odds.Times(way.ClassRightNow, language));
    }
}
