using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>What a quantity comes to when the reaction is complete and nothing goes wrong: the theory value that the file implies.</summary>
/// <param name="Quantity">The quantity.</param>
/// <param name="Value">Its value in its unit, or null where its formula gives no number on perfect readings.</param>
public sealed record IdealValue(QuantityDefinition Quantity, double? Value);
