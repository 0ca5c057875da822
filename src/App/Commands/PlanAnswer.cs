using Calx.App.Input;
using Calx.Practicals.Planning;

namespace Calx.App.Commands;

/// <summary>What <c>calx plan</c> answers.</summary>
/// <param name="Choice">What was asked.</param>
/// <param name="Seed">Which of the possible simulations.</param>
/// <param name="Plan">The plan, or null where none is made.</param>
/// <param name="Reason">Why none is made, or null.</param>
internal sealed record PlanAnswer(PlanChoice Choice, ulong Seed, Plan? Plan, string? Reason)
{
    /// <summary>What the kit of a lesson costs on average, or null where no price is given.</summary>
    public double? Cost => Plan is null || Choice.Prices.Count == 0 ? null : Plan.Kit.Sum(k => CostOf(k) ?? 0);

    /// <summary>What one piece of kit costs a lesson on average, or null where its price is not given.</summary>
    public double? CostOf(KitCount kit) => Choice.Prices.TryGetValue(kit.Item.Id, out double price) ? price * kit.UsedUp : null;
}
