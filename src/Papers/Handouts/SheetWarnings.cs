using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.Papers.Handouts;

/// <summary>What a teacher is told before a sheet is printed: something that is asked needs a reading that the table has no row for.</summary>
public static class SheetWarnings
{
    /// <summary>The warnings, a sentence each.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="language">The language that they are told in; null for British English.</param>
    public static IReadOnlyList<string> Of(PlanSettings plan, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        StudentSheetTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        Practical practical = plan.Practical;
        IEnumerable<string> answers = practical.Answers
            .Select(a => (a, Missing: AnswerReach.ReadingsOf(a, practical).Where(plan.Unread.Contains).ToArray())).Where(w => w.Missing.Length > 0)
            .Select(w => texts.AnswerLacksReading(Text.Capital(w.a.Label), Names(practical, w.Missing)));
        IEnumerable<string> questions = practical.Sheet.Questions
            .Select(q => (q, Missing: q.Needs.Where(plan.Unread.Contains).ToArray())).Where(w => w.Missing.Length > 0)
            .Select(w => texts.QuestionLacksReading(w.q.Ask, Names(practical, w.Missing)));
        return [.. answers, .. questions];
    }

    private static string Names(Practical practical, IEnumerable<string> readings) => string.Join("', '", readings.Select(r => ReadingNames.OfId(practical, r)));
}
