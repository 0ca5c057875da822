using System.Globalization;
using Calx.App.Live;

namespace Calx.App.Pages.Marking;

/// <summary>How a question in words went in the class.</summary>
/// <param name="Ask">The question.</param>
/// <param name="Answered">How many answered.</param>
/// <param name="Waiting">How many of these wait.</param>
/// <param name="Mean">Mean of the marks of those who answered and were marked, as people read it; a dash while there are none.</param>
public sealed record WordRow(string Ask, int Answered, int Waiting, string Mean)
{
    /// <summary>Every question that was answered, in the practical's order.</summary>
    public static IReadOnlyList<WordRow> Of(LessonMarks marks) =>
    [
        .. new AnswersInWords(marks, null).All.GroupBy(i => i.Prose.Question).Select(g =>
        {
            int[] given = [.. g.Select(i => i.Prose.Marks).OfType<int>()];
            return new WordRow(g.Key.Ask, g.Count(), g.Count(i => i.IsWaiting), given.Length == 0
                ? "–" : string.Create(CultureInfo.InvariantCulture, $"{given.Average():0.0} of {g.Key.Expected.Count}"));
        }),
    ];
}
