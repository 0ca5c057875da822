using Calx.Papers.Reports;
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
    public static IReadOnlyList<string> Of(PlanSettings plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Practical practical = plan.Practical;
        IEnumerable<string> answers = practical.Answers
            .Select(a => (a, Missing: AnswerReach.ReadingsOf(a, practical).Where(plan.Unread.Contains).ToArray())).Where(w => w.Missing.Length > 0)
            .Select(w => $"'{Text.Capital(w.a.Label)}' is asked for, but the table has no row for '{Names(practical, w.Missing)}'.");
        IEnumerable<string> questions = practical.Sheet.Questions
            .Select(q => (q, Missing: q.Needs.Where(plan.Unread.Contains).ToArray())).Where(w => w.Missing.Length > 0)
            .Select(w => $"The question '{w.q.Ask}' cannot be answered: the table has no row for '{Names(practical, w.Missing)}'.");
        return [.. answers, .. questions];
    }

    private static string Names(Practical practical, IEnumerable<string> readings) => string.Join("', '", readings.Select(r => ReadingNames.OfId(practical, r)));
}
