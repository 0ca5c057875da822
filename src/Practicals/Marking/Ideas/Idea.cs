namespace Calx.Practicals.Marking.Ideas;

/// <summary>
/// A way of working that gives a wrong value, as a change of the right formula. The rates are judgement, no source: they order
/// what explains an answer equally well, and are no statement about students.
/// </summary>
/// <param name="Id">Its id in data: lower case with hyphens.</param>
/// <param name="Label">What was done, as a clause: 'the ratio is the wrong way up'.</param>
/// <param name="Mend">What to say or ask next, a sentence.</param>
/// <param name="Rate">How often it lies behind a wrong value, among all values that are wrong; above 0, below 1.</param>
public sealed record Idea(string Id, string Label, string Mend, double Rate)
{
    /// <summary>Whether it is about digits left out.</summary>
    internal bool IsRounding => this == KnownIdeas.RoundedEarly || this == KnownIdeas.RoundedToWhole;

    /// <summary>Whether it lies behind judgements alone, and no value.</summary>
    internal bool IsOfJudgement => KnownIdeas.OfJudgements.Contains(Id);

    /// <inheritdoc/>
    public override string ToString() => Id;
}
