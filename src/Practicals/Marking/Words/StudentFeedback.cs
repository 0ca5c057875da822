using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Marking.Words;

/// <summary>Two or three sentences for one student: what is right, the one idea to mend, the next step. No value that the student did not find is told.</summary>
internal static class StudentFeedback
{
    /// <summary>More would be a list, not a sentence.</summary>
    private const int MostNamed = 3;

    /// <summary>Below it the sentence asks and does not name.</summary>
    private const double NamedFrom = 0.5;

    /// <summary>Marks are not given a language yet; who hands one on begins here.</summary>
    private static readonly FeedbackTexts Texts = new(EngineLanguage.British);
    private static readonly Wording Said = new(EngineLanguage.British);

    public static string Of(IReadOnlyList<AnswerMark> all)
    {
        // What the teacher took marks from has its own reason, which the rules do not know.
        AnswerMark[] marks = [.. all.Where(m => m.Overruled is null || HasAllMarks(m)).Select(m => m.Overruled is null ? m : m with { Verdict = new Verdict.Right(), Figures = Values.FiguresFault.None, HasWrongUnit = false })];
        return marks.Length == 0 && all.Count > 0
            ? Texts.MarkedByTeacher
            : string.Join(' ', new[] { RightOnes(marks), ToMend(marks), NextStep(marks) }.OfType<string>());
    }

    /// <summary>One sentence on one answer.</summary>
    public static string Of(AnswerMark mark) => mark.Overruled is not null ? HasAllMarks(mark) ? Texts.AcceptedByTeacher : Texts.MarkedByTeacher : mark.Verdict switch
    {
        Verdict.Right => mark.Figures == Values.FiguresFault.None && !mark.HasWrongUnit ? Texts.Right : Watch(mark),
        Verdict.Carried => Texts.Carried,
        Verdict.RoundedEarly => Texts.RoundedEarly,
        Verdict.Wrong { Reason: string reason } => Texts.NotRight(reason),
        Verdict.Wrong => Idea(mark) is Idea idea ? Texts.Perhaps(idea.Label, idea.Mend) : mark.Answer is Definition.JudgementAnswer ? Texts.ReadingsSayOtherwise
            : Texts.AnotherValue,
        Verdict.Missing => Texts.NothingYet,
        Verdict.Unreadable unreadable => Texts.Unreadable(unreadable.Reason),
        Verdict.CannotMark cannot => Texts.CouldNotMark(cannot.Reason),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static bool HasAllMarks(AnswerMark mark) => mark.Marks == mark.Answer.Marks;

    private static string? RightOnes(AnswerMark[] marks)
    {
        string[] right = [.. marks.Where(m => m.IsAccepted && !m.IsCarried).Select(m => m.Answer.Label)];
        bool areValues = marks.All(m => m.Answer is Definition.AnswerDefinition);
        Func<string, string, string, string> some = areValues ? Texts.SomeValues : Texts.SomeAnswers;
        return right.Length == 0 ? null
            : right.Length == marks.Length ? areValues ? Texts.AllValues : Texts.AllAnswers
            : right.Length <= MostNamed ? Texts.RightOnes(Said.And(right))
            : some(Said.CountFirst(right.Length), Said.Count(marks.Length), Said.And(right[^2..]));
    }

    private static string? ToMend(AnswerMark[] marks)
    {
        // A sure idea helps more than a look at the first wrong place; then what cost a mark; then what did not.
        AnswerMark? wrong = Array.Find(marks, m => m.Verdict is Verdict.Wrong && Idea(m) is not null) ?? Array.Find(marks, m => m.Verdict is Verdict.Wrong);
        AnswerMark? watched = Array.Find(marks, m => IsWatched(m) && m.ComputedMarks < m.Answer.Marks);
        wrong ??= watched is null ? Array.Find(marks, m => m.Verdict is Verdict.RoundedEarly) : null;
        if (wrong is null)
        {
            watched ??= Array.Find(marks, IsWatched);
            return watched is null ? null : InAnswer(watched);
        }

        return Texts.LookAgain(
            wrong.Answer.Label, wrong.Verdict is Verdict.Wrong { Reason: string reason } ? Texts.WhyWrong(reason) : Wording.Small(Of(wrong)));
    }

    private static string? NextStep(AnswerMark[] marks)
    {
        string[] missing = [.. marks.Where(m => m.Verdict is Verdict.Missing).Select(m => m.Answer.Label)];
        return missing.Length == marks.Length ? Texts.NothingHandedIn
            : marks.FirstOrDefault(m => m.Verdict is Verdict.CannotMark) is { Verdict: Verdict.CannotMark cannot } left
                ? Texts.NotMarked(left.Answer.Label, cannot.Reason)
            : missing.Length > 0 ? Texts.StillToDo(Said.And([.. missing.Take(MostNamed)]))
            : marks.Any(m => m.IsUnread) ? Texts.ToBeRead
            : IsRightAfterwards(marks) ? Texts.CountsAfterwards
            : marks.All(m => m.IsAccepted) ? Texts.NextQuestion
            : null;
    }

    private static bool IsWatched(AnswerMark mark) => mark.IsAccepted && (mark.HasWrongUnit || mark.Figures != Values.FiguresFault.None);

    /// <summary>One wrong answer, and behind it at least one that rightly uses it.</summary>
    private static bool IsRightAfterwards(AnswerMark[] marks)
    {
        int wrong = Array.FindIndex(marks, m => m.Verdict is Verdict.Wrong);
        return wrong >= 0 && marks.Count(m => m.Verdict is Verdict.Wrong) == 1 && marks.Skip(wrong + 1).Any(m => m.IsCarried);
    }

    /// <summary>That a value fits the readings of others is for the teacher's eyes only.</summary>
    private static Idea? Idea(AnswerMark mark) =>
        mark.Ideas?.Candidates is [{ Probability: >= NamedFrom, Ideas: [Idea idea] }, ..] && idea != KnownIdeas.OtherGroup ? idea : null;

    private static string Watch(AnswerMark mark) =>
        mark.HasWrongUnit ? Texts.RightUnit
        : mark.Figures == Values.FiguresFault.TooFew ? Texts.RightFew
        : Texts.RightMany;

    /// <summary>The same of an answer that is named.</summary>
    private static string InAnswer(AnswerMark mark) =>
        mark.HasWrongUnit ? Texts.InUnit(mark.Answer.Label)
        : mark.Figures == Values.FiguresFault.TooFew ? Texts.InFew(mark.Answer.Label)
        : Texts.InMany(mark.Answer.Label);
}
