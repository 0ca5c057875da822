namespace Calx.Practicals.Inference.Posterior;

/// <summary>Causes that the group's weighings cannot tell apart.</summary>
/// <param name="Causes">Their ids, the likeliest first; at least two.</param>
/// <param name="Probability">That one of them is at work, 0 to 1.</param>
public sealed record TiedCauses(IReadOnlyList<string> Causes, double Probability);
