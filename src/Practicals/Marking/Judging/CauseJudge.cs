using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking.Judging;

/// <summary>Judges a cause by its sign: it has to move the value to the side on which the own value lies. A cause that can move it either way fits both.</summary>
internal static class CauseJudge
{
    /// <param name="answer">What is asked.</param>
    /// <param name="given">As written, not empty.</param>
    /// <param name="value">The value that is explained.</param>
    /// <param name="own">The student's numbers.</param>
    /// <param name="exact">That value from the readings, or not a number.</param>
    /// <param name="facts">The practical.</param>
    public static Judged Of(JudgementAnswer.OfCause answer, string given, AskedValue value, OwnNumbers own, double exact, JudgingFacts facts)
    {
        double written = own.HasWritten(value.Answer.Id) ? own.AtHand(value.Answer.Id) : double.NaN, accepted = facts.Accepted(value);
        if (!double.IsFinite(exact) && !double.IsFinite(written))
        {
            return Judged.NotMarked(MarkReasons.Texts.NoValue(value.Answer.Label));
        }

        IReadOnlyList<Choice> choices = JudgementChoices.Of(facts.Practical, answer);
        string? chosen = JudgementChoices.Meant(choices, given) ?? (IsBlame(given) ? null : JudgementWords.Chosen(choices, given));
        int side = Side(exact, accepted), writtenSide = Side(written, accepted);
        bool expectedNone = facts.IsAsExpected(own) == true;
        string expected = expectedNone ? MarkReasons.Texts.ChoiceAsExpected : Expected(facts, value, side != 0 ? side : writtenSide);
        return chosen is null
                ? IsBlame(given) ? Judged.Wrong(expected, given, KnownIdeas.Blame) : Judged.Unreadable(MarkReasons.Texts.NoCauseOfThese, expected)
            : chosen == JudgementChoices.None
                ? expectedNone ? new Judged(new Verdict.Right(), expected) : Judged.Wrong(expected, given, KnownIdeas.NoCauseSeen)
            : Fits(facts, chosen, value, side) ? new Judged(new Verdict.Right(), expected)
            : Fits(facts, chosen, value, writtenSide) ? new Judged(new Verdict.Carried(), expected)
            : Judged.Wrong(expected, given, KnownIdeas.OtherSign);
    }

    /// <summary>Whether a cause moves a value to a side.</summary>
    internal static bool Fits(JudgingFacts facts, string cause, AskedValue value, int side) =>
        side != 0 && facts.Practical.Faults.FirstOrDefault(f => f.Cause == cause) is FaultDefinition fault
        && facts.DirectionOf(fault, value) is var direction && (direction == 0 || direction == side);

    /// <summary>The side of the accepted value on which a value lies.</summary>
    internal static int Side(double value, double accepted) => double.IsFinite(value) ? Math.Sign(value - accepted) : 0;

    private static string Expected(JudgingFacts facts, AskedValue value, int side) => string.Join(
        "; ", facts.Practical.Faults.Where(f => facts.DirectionOf(f, value) == side).OrderByDescending(f => f.Rate).Select(f => f.Label));

    private static bool IsBlame(string given) =>
        JudgementChoices.Folded(given) is var folded && (folded.Contains("humanerror", StringComparison.Ordinal) || folded.Contains("mymistake", StringComparison.Ordinal));
}
