using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking.Judging;

/// <summary>Judges a change of the method: it has to work against the cause that the student named, or where none was named, against one that fits.</summary>
internal static class ImprovementJudge
{
    /// <param name="answer">What is asked.</param>
    /// <param name="given">As written, not empty.</param>
    /// <param name="cause">What was answered as cause; empty for nothing.</param>
    /// <param name="causeIsRight">Whether that was accepted.</param>
    /// <param name="value">The value that is explained.</param>
    /// <param name="exact">That value from the readings, or not a number.</param>
    /// <param name="facts">The practical.</param>
    public static Judged Of(JudgementAnswer.OfImprovement answer, string given, string cause, bool causeIsRight, AskedValue value, double exact, JudgingFacts facts)
    {
        IReadOnlyList<Choice> choices = JudgementChoices.Of(facts.Practical, answer);
        IReadOnlyList<Choice> causes = JudgementChoices.Of(facts.Practical, answer.Cause);
        string? named = JudgementChoices.Meant(causes, cause) ?? JudgementWords.Chosen(causes, cause);
        string? expected = choices.FirstOrDefault(c => c.Id == named)?.Label;
        if ((JudgementChoices.Meant(choices, given) ?? JudgementWords.Chosen(choices, given)) is not string chosen)
        {
            return Judged.Unreadable(MarkReasons.Texts.NoCautionOfThese, expected);
        }

        int side = CauseJudge.Side(exact, facts.Accepted(value));
        // Where nothing went wrong, any of them makes the next result better; where the named cause has none of its own, one that fits the sign.
        bool fits = named is null or JudgementChoices.None || expected is null
            ? named == JudgementChoices.None || CauseJudge.Fits(facts, chosen, value, side)
            : chosen == named;
        return !fits ? Judged.Wrong(expected, given, KnownIdeas.OtherCausesRemedy)
            : named is null || causeIsRight ? new Judged(new Verdict.Right(), expected)
            : new Judged(new Verdict.Carried(), expected);
    }
}
