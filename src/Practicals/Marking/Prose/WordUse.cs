namespace Calx.Practicals.Marking.Prose;

/// <summary>A word of measurement in an answer.</summary>
/// <param name="Start">First character, from 0.</param>
/// <param name="Length">Characters.</param>
/// <param name="IsMisused">Whether it does not say what is meant, as far as a rule can see; the teacher decides.</param>
/// <param name="Advice">What to say of a misused word, a sentence; null for one that is not.</param>
public readonly record struct WordUse(int Start, int Length, bool IsMisused, string? Advice);
