namespace Calx.Papers.SheetCheck;

/// <summary>Something on a sheet to look at.</summary>
/// <param name="Rule">Id of the rule, such as <c>weight</c>.</param>
/// <param name="Place">Where, in words.</param>
/// <param name="Text">The text that it is about; empty where something is missing from the whole sheet.</param>
/// <param name="Problem">What is wrong, a clause without a full stop.</param>
/// <param name="Expected">What is expected instead, a clause without a full stop.</param>
public sealed record SheetFinding(string Rule, string Place, string Text, string Problem, string Expected);
