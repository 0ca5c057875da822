using Calx.App.Live;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;

namespace Calx.App.Pages.Students;

/// <summary>The balances of a lesson by their letters.</summary>
public static class BalanceChoices
{
    /// <summary>Those that the school keeps; where it keeps none, as many as the plan has, lettered from A.</summary>
    public static IReadOnlyList<BalanceChoice> Of(LetteredBalances kept, PlanSettings plan) => kept.Kept.Count > 0
        ? [.. kept.Kept.Select(b => new BalanceChoice(b.Letter, kept.Of(b.Letter)?.Decimals ?? plan.Balances[0].Decimals))]
        : [.. plan.Balances.Select((Balance b, int i) => new BalanceChoice(((char)('A' + (i % 26))).ToString(), b.Decimals))];
}
