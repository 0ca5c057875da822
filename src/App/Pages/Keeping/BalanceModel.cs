using Calx.Records.Lessons;

namespace Calx.App.Pages.Keeping;

/// <summary>One balance.</summary>
/// <param name="Balance">The balance.</param>
/// <param name="Checks">Its checks, the latest first.</param>
/// <param name="Uses">The lessons in which it was used, the latest first.</param>
/// <param name="Typed">A check that was not taken, as it was typed, or null.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
/// <param name="Done">What was done, or null.</param>
public sealed record BalanceModel(
    KeptBalance Balance, IReadOnlyList<BalanceCheck> Checks, IReadOnlyList<BalanceUse> Uses, TypedCheck? Typed, string? Fault, string? Done);
