using System.Runtime.CompilerServices;
using Calx.App.Live;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;
using Calx.Records.Journal;

namespace Calx.App.Pages.Answers;

/// <summary>
/// What students read of their own answers. A whole class is marked at once, since others' readings and groups explain some answers; a
/// class that answers on thirty devices shares the result, which is worked out anew only for who has sent something since, or after a while.
/// </summary>
public sealed class AnswerFeedback(LessonMarking marking, TimeProvider clock)
{
    /// <summary>So long others' new answers and readings change nothing of what a student reads. Judgement.</summary>
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(10);

    private readonly ConditionalWeakTable<LessonRoom, Turn> turns = [];

    /// <summary>What a student reads now; null where feedback is not shown, or nothing was answered.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="member">The student.</param>
    /// <param name="settings">How it is marked, and when students hear of it.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<StudentFeedback?> Of(LessonView view, int member, MarkingSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(settings);
        long own = view.Entries.LastOrDefault(e => e.Entry.Cell.Member == member && e.Entry.Content is EntryContent.Answer or EntryContent.Mark)?.Number ?? 0;
        if (!settings.ShowsFeedback || own == 0)
        {
            return null;
        }

        LessonMarks marks = await Marks(view.Room, own, cancellation);
        MarkedWork? marked = marks.Each.FirstOrDefault(e => e.Work.Member.Number == member).Marked;
        return marked is null ? null : Said(marked, showsMarks: settings is { Feedback: FeedbackTime.Later, IsOpened: true });
    }

    private async Task<LessonMarks> Marks(LessonRoom room, long own, CancellationToken cancellation)
    {
        Turn turn = turns.GetOrCreateValue(room);
        await turn.Gate.WaitAsync(cancellation);
        try
        {
            if (turn.Last is not LessonMarks last || last.View.Number < own || clock.GetUtcNow() - turn.At > Fresh)
            {
                (turn.Last, turn.At) = (await marking.Of(room, cancellation), clock.GetUtcNow());
            }

            return turn.Last;
        }
        finally
        {
            turn.Gate.Release();
        }
    }

    private static StudentFeedback Said(MarkedWork marked, bool showsMarks)
    {
        var said = new Dictionary<string, SaidOfAnswer>(StringComparer.Ordinal);
        foreach (AnswerMark mark in marked.Answers.Where(m => m.Verdict is not Verdict.Missing))
        {
            // What the rules say may contradict the teacher's own marks, which hold.
            said[mark.Answer.Id] = new SaidOfAnswer(mark.Overruled is null ? mark.Feedback : "Marked by your teacher.", showsMarks ? OutOf(mark.Marks, mark.Answer.Marks) : null);
        }

        foreach (ProseMark prose in marked.Prose.Where(p => p.Text.Length > 0))
        {
            said[prose.Question.Id] = !showsMarks ? new SaidOfAnswer("Handed in: your teacher reads it.", null)
                : prose.Marks is int marks ? new SaidOfAnswer(prose.Comment ?? "Marked by your teacher.", OutOf(marks, prose.Of))
                : new SaidOfAnswer("Your teacher has not marked this yet.", null);
        }

        return showsMarks ? new StudentFeedback(said, marked.Feedback, Whole(marked)) : new StudentFeedback(said, null, null);
    }

    private static string OutOf(int marks, int of) => FormattableString.Invariant($"{marks} of {of}");

    private static string Whole(MarkedWork marked) => $"{OutOf(marked.Total, marked.Of)} marks" + marked.Waiting switch
    {
        0 => "",
        1 => "; one answer in words is not marked yet",
        int n => FormattableString.Invariant($"; {n} answers in words are not marked yet"),
    } + marked.Unread switch
    {
        0 => "",
        1 => "; your teacher looks at one answer that could not be read",
        int n => FormattableString.Invariant($"; your teacher looks at {n} answers that could not be read"),
    };

    /// <summary>One marking of a lesson at a time.</summary>
    private sealed class Turn
    {
        /// <summary>Never disposed: it has no handle of the operating system while nobody asks for one.</summary>
        public SemaphoreSlim Gate { get; } = new(1);

        public LessonMarks? Last { get; set; }

        public DateTimeOffset At { get; set; }
    }
}
