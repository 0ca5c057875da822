using System.Globalization;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Pages.Answers;

/// <summary>How many students of a lesson have answered; no names.</summary>
/// <param name="Begun">Students who have answered something.</param>
/// <param name="Done">Those of them who have answered everything that is asked.</param>
public sealed record AnswerCounts(int Begun, int Done)
{
    /// <summary>Those of a lesson.</summary>
    public static AnswerCounts Of(LessonView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        CellState[] cells = [.. view.Table.Where(c => c.Cell is { Group: 0, Member: > 0 } && c.Current.Entry.Content is EntryContent.Answer)];
        if (cells.Length == 0)
        {
            return new AnswerCounts(0, 0);
        }

        HashSet<string> asked = [.. AnswerQuestions.Of(view).Select(q => q.What)];
        int[] answered = [.. cells.GroupBy(c => c.Cell.Member).Select(g => g.Count(c => asked.Contains(c.Cell.What)))];
        return new AnswerCounts(answered.Length, answered.Count(n => n == asked.Count));
    }

    /// <summary>In a sentence; null while nobody has.</summary>
    public string? Sentence => Begun == 0 ? null : string.Create(
        CultureInfo.InvariantCulture, $"{Begun} {(Begun == 1 ? "student has" : "students have")} begun to answer, {(Done == 0 ? "none has" : Done == 1 ? "1 has" : $"{Done} have")} answered everything.");
}
