namespace Calx.Practicals.Inference.Posterior;

/// <summary>Two causes at work in one group, each moving the result by more than counts.</summary>
/// <param name="First">Id of the cause that comes first in the practical's list.</param>
/// <param name="Second">Id of the other.</param>
/// <param name="Probability">That these two are at work, 0 to 1.</param>
public sealed record CausePair(string First, string Second, double Probability);
