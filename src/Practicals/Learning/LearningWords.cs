using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Learning;

/// <summary>What is learned, in words.</summary>
internal sealed class LearningWords(EngineLanguage language)
{
    /// <summary>A smaller difference of the likeliest times in min is not worth a sentence.</summary>
    private const double WorthTellingInMinutes = 1;

    private readonly LearningTexts texts = new(language);
    private readonly Wording wording = new(language);

    public string Times(int times, int lessons) => Cases(times, lessons, texts.OneTime, texts.SomeTimes);

    public string Groups(int groups, int lessons) => Cases(groups, lessons, texts.OneGroup, texts.SomeGroups);

    public string Pieces(int pieces, int lessons) => Cases(pieces, lessons, texts.OnePiece, texts.SomePieces);

    /// <summary>'Cooling took 14 min, not 10.'</summary>
    public string? Took(LessonStep step, Timed timed) =>
        timed.Mean.Contains(step.Minutes.Mean) || Math.Abs(timed.Minutes.Likely - step.Minutes.Likely) <= WorthTellingInMinutes
            ? null
            : texts.Took(wording.Quoted(Wording.Capital(step.Label)), Minutes(timed.Minutes.Likely), Minutes(step.Minutes.Likely));

    /// <summary>Groups that weighed sooner have a warmer vessel, and no faster one.</summary>
    public string? CoolsNoFaster(LessonStep step, Timed timed) => Took(step, timed) is null
        ? null : texts.CoolsNoFaster(wording.Quoted(Wording.Capital(step.Label)), Minutes(timed.Minutes.Likely), Minutes(step.Minutes.Likely));

    /// <summary>How often a fault was found.</summary>
    public string? Happened(string label, double before, Rated rated) => Differs(before, rated.Interval)
        ? texts.Happened(wording.Quoted(Wording.Capital(label)), wording.Percent(rated.Rate), wording.Percent(before)) : null;

    /// <summary>How often a piece broke.</summary>
    public string? Broke(string label, double before, Rated rated) => Differs(before, rated.Interval)
        ? texts.Broke(wording.Quoted(label), wording.Percent(rated.Rate), wording.Percent(before)) : null;

    private static bool Differs(double before, CoverageInterval interval) => !interval.Contains(before);

    private static string Minutes(double minutes) => minutes.InFigures(minutes < 10 ? "0.#" : "0");

    private string Cases(int cases, int lessons, string one, Func<string, string> some) =>
        (cases, lessons) switch
        {
            (_, 0) => texts.OtherSchools,
            (1, 1) => texts.InOneLesson(one),
            (_, 1) => texts.InOneLesson(some(cases.InFigures())),
            _ => texts.InLessons(some(cases.InFigures()), wording.Count(lessons)),
        };
}
