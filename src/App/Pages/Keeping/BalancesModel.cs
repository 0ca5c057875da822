using Calx.Records.Lessons;

namespace Calx.App.Pages.Keeping;

/// <summary>The school's balances.</summary>
/// <param name="Balances">By letter.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
public sealed record BalancesModel(IReadOnlyList<KeptBalance> Balances, string? Fault);
