using Calx.Practicals.Marking.Prose;

namespace Calx.Practicals.Marking;

/// <summary>What one student handed in, marked.</summary>
/// <param name="Work">What was handed in.</param>
/// <param name="Answers">Each answer asked for, in the practical's order.</param>
/// <param name="Prose">Each answer in words that was asked for: a person marks it.</param>
/// <param name="Feedback">Two or three sentences for the student: what is right, the one idea to mend, the next step.</param>
public sealed record MarkedWork(StudentWork Work, IReadOnlyList<AnswerMark> Answers, IReadOnlyList<ProseMark> Prose, string Feedback)
{
    /// <summary>Marks earned.</summary>
    public int Total => Answers.Sum(a => a.Marks) + Prose.Sum(p => p.Marks ?? 0);

    /// <summary>Marks to be earned.</summary>
    public int Of => Answers.Sum(a => a.Answer.Marks) + Prose.Sum(p => p.Of);

    /// <summary>How many answers in words wait for the teacher's marks.</summary>
    public int Waiting => Prose.Count(p => p.IsWaiting);

    /// <summary>How many other answers could not be read or marked, so that a person has to look at them.</summary>
    public int Unread => Answers.Count(a => a.IsUnread);

    /// <summary>Whether the total is final: nothing waits for the teacher.</summary>
    public bool IsFinal => Waiting == 0 && Unread == 0;

    /// <summary>Whether anything was handed in.</summary>
    public bool IsHandedIn => Answers.Any(a => a.Given.Length > 0) || Prose.Any(p => p.Text.Length > 0);

    internal static MarkedWork From(
        StudentWork work, IReadOnlyList<AnswerMark> answers, IReadOnlyList<ProseMark> prose, IReadOnlyDictionary<string, Overruling> overrulings)
    {
        AnswerMark[] marked = [.. answers.Select(a => overrulings.GetValueOrDefault(a.Answer.Id) is Overruling o ? a with { Overruled = o } : a)];
        return new(work, marked, prose, Words.StudentFeedback.Of(marked));
    }
}
