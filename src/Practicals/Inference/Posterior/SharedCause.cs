namespace Calx.Practicals.Inference.Posterior;

/// <summary>A cause that befell most groups of a class, or of those that used one balance, at once.</summary>
/// <param name="Cause">Its id.</param>
/// <param name="Label">What happened, for people; a clause without a full stop.</param>
/// <param name="Probability">That it is shared rather than a matter of single groups, 0 to 1.</param>
/// <param name="Balance">The balance whose groups share it, as written; null for the whole class.</param>
/// <param name="Groups">How many groups the judgement rests on.</param>
/// <param name="Sentence">All this in one sentence for the teacher.</param>
public sealed record SharedCause(
    string Cause, string Label, double Probability, string? Balance, int Groups, string Sentence);
