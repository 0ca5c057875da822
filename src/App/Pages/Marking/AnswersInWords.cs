using Calx.App.Live;
using Calx.Practicals.Definition;

namespace Calx.App.Pages.Marking;

/// <summary>The answers in words of a lesson, question by question, so that all answers to one are marked alike; within a question by number in the class.</summary>
/// <param name="marks">The lesson's answers.</param>
/// <param name="only">Id of the one question that is looked at, or null for all.</param>
public sealed class AnswersInWords(LessonMarks marks, string? only)
{
    /// <summary>Every answer that was written, marked or not.</summary>
    public IReadOnlyList<WordItem> All { get; } =
    [
        .. marks.View.Practical.Sheet.Questions.Where(q => only is null || q.Id == only)
            .SelectMany(q => marks.Each.SelectMany(e => e.Marked.Prose.Where(p => p.Question.Id == q.Id && p.Text.Length > 0).Select(p => new WordItem(e.Work, p)))),
    ];

    /// <summary>How many wait.</summary>
    public int Waiting => All.Count(i => i.IsWaiting);

    /// <summary>The one of a key, or null.</summary>
    public WordItem? Find(string? key) => All.FirstOrDefault(i => i.Key == key);

    /// <summary>The next that waits behind one; the first of all where that is not there. Null at the end.</summary>
    public WordItem? After(string? key) => All.Skip(Place(key) + 1).FirstOrDefault(i => i.IsWaiting);

    /// <summary>The one before, marked or not; null at the beginning.</summary>
    public WordItem? Before(string? key) => Place(key) is > 0 and int place ? All[place - 1] : null;

    /// <summary>How many wait for each question that was answered.</summary>
    public static IReadOnlyList<(SheetQuestion Question, int Waiting)> Questions(LessonMarks marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        return [.. new AnswersInWords(marks, null).All.GroupBy(i => i.Prose.Question).Select(g => (g.Key, g.Count(i => i.IsWaiting)))];
    }

    private int Place(string? key)
    {
        for (int i = 0; i < All.Count; i++)
        {
            if (All[i].Key == key)
            {
                return i;
            }
        }

        return -1;
    }
}
