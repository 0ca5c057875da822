using System.Globalization;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Pages.Answers;

/// <summary>A question with what one student has answered so far.</summary>
/// <param name="Question">The question.</param>
/// <param name="Number">Its place among the lesson's questions, from 1.</param>
/// <param name="Cell">What stands in the journal, or null.</param>
/// <param name="FormId">Id of the entry that the form makes: the same until something was answered, so that a double click is one entry.</param>
public sealed record AskedOfStudent(AnswerQuestion Question, int Number, CellState? Cell, string FormId)
{
    /// <summary>A student's questions.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="device">The device.</param>
    /// <param name="member">The student.</param>
    public static IReadOnlyList<AskedOfStudent> All(LessonView view, string device, int member)
    {
        ArgumentNullException.ThrowIfNull(view);
        Dictionary<string, CellState> cells = view.Table.Where(c => c.Cell.Group == 0 && c.Cell.Member == member && c.Current.Entry.Content is EntryContent.Answer)
            .ToDictionary(c => c.Cell.What, StringComparer.Ordinal);
        return [.. AnswerQuestions.Of(view).Select((q, i) => Of(q, i + 1, cells.GetValueOrDefault(q.What)))];

        AskedOfStudent Of(AnswerQuestion question, int number, CellState? cell) => new(
            question,
            number,
            cell,
            FormEntryId.Of(view.Room.Lesson.Id, cell?.History.Count ?? 0, string.Create(CultureInfo.InvariantCulture, $"{device} {member} {question.What}")));
    }

    /// <summary>The answer that counts, as it is shown; null where there is none.</summary>
    public string? Given => Cell?.Current.Entry.Content is EntryContent.Answer answer ? Question.Shown(answer) : null;

    /// <summary>The answers before it, the oldest first.</summary>
    public IReadOnlyList<string> Before => Cell is null ? []
        : [.. Cell.History.Where(k => k.Entry.Id != Cell.Current.Entry.Id).Select(k => k.Entry.Content).OfType<EntryContent.Answer>().Select(Question.Shown)];

    /// <summary>The answer as it was typed or chosen, to be put right; empty where there is none.</summary>
    public string Text => (Cell?.Current.Entry.Content as EntryContent.Answer)?.Text ?? "";

    /// <summary>The unit that was chosen with it, or null.</summary>
    public string? Unit => (Cell?.Current.Entry.Content as EntryContent.Answer)?.Unit;
}
