using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>Another material that comes with what is added.</summary>
/// <param name="Material">Id of the other material.</param>
/// <param name="Share">Its share of the mass added, 0 to 1, a formula over parameters.</param>
public sealed record AddedShare(string Material, Expression Share);
