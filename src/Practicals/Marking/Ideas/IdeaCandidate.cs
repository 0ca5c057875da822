namespace Calx.Practicals.Marking.Ideas;

/// <summary>What may lie behind a wrong value.</summary>
/// <param name="Ideas">One idea, or two at once.</param>
/// <param name="Formula">The changed formula, for people to read.</param>
/// <param name="Value">What it gives with the numbers at hand.</param>
/// <param name="Probability">How probable it is that this, and not another idea or something unknown, lies behind the value; 0 to 1.</param>
/// <param name="Chance">In how many of 100 numbers written at random the same would be said of an idea at least as usual, as a share: a guide to
/// how much the match is worth.</param>
public sealed record IdeaCandidate(IReadOnlyList<Idea> Ideas, string Formula, double Value, double Probability, double Chance);
