namespace Calx.Practicals.Planning.Amounts;

/// <summary>What one change of the plan would buy, or cost, in its conclusions.</summary>
/// <param name="Id">Which change: <c>finer-balance</c>, <c>finest-only</c>, <c>reading-empty</c>, <c>another-trial</c>, <c>another-heating</c>,
/// <c>one-heating</c>.</param>
/// <param name="Label">The change, for people.</param>
/// <param name="Then">What the plan would come to.</param>
public sealed record AmountChange(string Id, string Label, AmountPoint Then);
