using Calx.App.Learning;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;

namespace Calx.App.Input;

/// <summary>A lesson to plan, as it was asked for.</summary>
/// <param name="Settings">The lesson.</param>
/// <param name="Wanted">Ids of the conclusions asked for.</param>
/// <param name="Stock">What is known of the school's stock.</param>
/// <param name="TooMuch">Why no class may do it, or null.</param>
/// <param name="Learned">The learned numbers that it takes, or null.</param>
public sealed record PlanChoice(
    PlanSettings Settings,
    IReadOnlyList<string> Wanted,
    PlanStock Stock,
    string? TooMuch,
    AcceptedNumbers? Learned = null);
