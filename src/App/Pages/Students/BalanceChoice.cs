namespace Calx.App.Pages.Students;

/// <summary>A balance that a group may choose.</summary>
/// <param name="Letter">The letter printed on it.</param>
/// <param name="Decimals">How many decimals it shows.</param>
public sealed record BalanceChoice(string Letter, int Decimals);
