using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>How far a reagent alone would let a reaction go.</summary>
/// <param name="Formula">The reagent.</param>
/// <param name="Moles">Its amount, in mol.</param>
/// <param name="Extent">Moles of the reaction as written until it is used up: its amount over its whole number.</param>
/// <param name="ProbabilityLimiting">That it is the first to be used up, given how well the masses are known.</param>
/// <param name="LeftOverInGrams">What stays of it when the limiting reagent, judged by the estimates, is used up.</param>
public sealed record ReagentExtent(
    string Formula,
    UncertainValue Moles,
    UncertainValue Extent,
    double ProbabilityLimiting,
    UncertainValue LeftOverInGrams);
