using Calx.Practicals.Definition;

namespace Calx.Practicals.Marking;

/// <summary>How one answer went in a class.</summary>
/// <param name="Answer">What was asked for.</param>
/// <param name="Answered">How many wrote something.</param>
/// <param name="Accepted">How many of these were accepted, carried ones among them.</param>
/// <param name="Carried">How many were accepted with an earlier mistake carried forward.</param>
/// <param name="Unread">How many wrote what could not be read or marked: a person has to look.</param>
public sealed record QuestionResult(AskedAnswer Answer, int Answered, int Accepted, int Carried, int Unread)
{
    internal static QuestionResult Of(AskedAnswer answer, IReadOnlyList<MarkedWork> works)
    {
        AnswerMark[] marks = [.. works.SelectMany(w => w.Answers).Where(m => m.Answer == answer)];
        return new QuestionResult(
            answer, marks.Count(m => m.Verdict is not Verdict.Missing), marks.Count(m => m.IsAccepted), marks.Count(m => m.IsCarried), marks.Count(m => m.IsUnread));
    }
}
