using Calx.Practicals.Marking.Values;

namespace Calx.Practicals.Marking;

/// <summary>What is lost once a paper: for figures, for units, for rounding early. Where an answer has a mark of its own for these, that one decides.</summary>
internal static class Penalties
{
    /// <summary>Takes them from the first answers they belong to; no answer goes below 0.</summary>
    public static IReadOnlyList<AnswerMark> Taken(IReadOnlyList<AnswerMark> marks, MarkingPolicy policy)
    {
        AnswerMark[] taken = [.. marks];
        Take(taken, policy.FiguresPenalty, m => m.Answer.MarksFor.Figures == 0 && m.Figures != FiguresFault.None);
        Take(taken, policy.UnitPenalty, m => m.Answer.MarksFor.Unit == 0 && m.HasWrongUnit);
        Take(taken, policy.EarlyRounding == EarlyRounding.OneMarkOff ? 1 : 0, m => m.Verdict is Verdict.RoundedEarly);
        return taken;
    }

    private static void Take(AnswerMark[] marks, int penalty, Func<AnswerMark, bool> belongs)
    {
        int at = Array.FindIndex(marks, m => m.ComputedMarks > 0 && m.IsAccepted && belongs(m));
        if (at >= 0)
        {
            marks[at] = marks[at] with { ComputedMarks = Math.Max(0, marks[at].ComputedMarks - penalty) };
        }
    }
}
