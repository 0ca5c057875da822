namespace Calx.Chemistry.Amounts;

/// <summary>One formula that the masses may belong to.</summary>
/// <param name="Formula">The formula, parts in the order given.</param>
/// <param name="Numbers">How many of each part.</param>
/// <param name="Probability">After the weighing.</param>
/// <param name="PriorProbability">Before it: judgement.</param>
/// <param name="LikelihoodRatio">How well the masses alone speak for it, over the best candidate: 1 for that one. Free
/// of the prior.</param>
/// <param name="ChiSquared">Squared distance of the masses from it in standard uncertainties; about the number of parts
/// less one where it is right.</param>
public sealed record FormulaCandidate(
    string Formula,
    IReadOnlyList<int> Numbers,
    double Probability,
    double PriorProbability,
    double LikelihoodRatio,
    double ChiSquared);
