namespace Calx.Practicals.Inference.Posterior;

/// <summary>How much of something a group will have put in, before its readings are looked at: normal.</summary>
/// <param name="Mean">In g.</param>
/// <param name="StandardDeviation">In g, above 0.</param>
internal readonly record struct AmountPrior(double Mean, double StandardDeviation);
