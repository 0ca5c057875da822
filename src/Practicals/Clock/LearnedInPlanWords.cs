using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Clock;

/// <summary>What a plan says of the numbers that past lessons taught.</summary>
internal static class LearnedInPlanWords
{
    /// <summary>A smaller difference of the likeliest times in min is not worth a word.</summary>
    private const double WorthTellingInMinutes = 1;

    /// <summary>From where they are, then each time that differs from the file's; nothing where none was learned.</summary>
    public static IEnumerable<string> Of(PlanSettings settings, SettingsTexts texts)
    {
        if (settings.Learned is not LearnedFrom learned)
        {
            yield break;
        }

        string what = (learned.Times.Count, learned.Shares) switch
        {
            ( > 0, 0) => texts.LearnedTimes,
            (0, _) => texts.LearnedRates,
            _ => texts.LearnedTimesAndRates,
        };
        string from = learned.Lessons == 1 ? texts.FromOneLesson(what, learned.AcceptedOn) : texts.FromLessons(what, learned.Lessons.InFigures(), learned.AcceptedOn);
        yield return learned.ClassName.Length == 0 ? from : texts.ForClass(from, learned.ClassName);
        foreach (LessonStep step in settings.Practical.Steps.Where(s => learned.Times.Contains(s.Id) && settings.IsInLesson(s)))
        {
            double now = settings.Times[step.Id].Likely;
            if (Math.Abs(now - step.Minutes.Likely) > WorthTellingInMinutes)
            {
                yield return texts.LearnedTime(step.Label, now.InFigures("0"), step.Minutes.Likely.InFigures("0.#"));
            }
        }
    }
}
