using Calx.Practicals.Definition;

namespace Calx.Practicals.Planning;

/// <summary>Something that went wrong in a group of an invented class.</summary>
/// <param name="Fault">What.</param>
/// <param name="MovedInGrams">By how much it moved the mass on which the group is judged, in g.</param>
public sealed record CoverCause(FaultDefinition Fault, double MovedInGrams);
