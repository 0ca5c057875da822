using Calx.Practicals.Planning;

namespace Calx.App.Input;

/// <summary>A lesson to plan, as it was asked for.</summary>
/// <param name="Settings">The lesson.</param>
/// <param name="Wanted">Ids of the conclusions asked for.</param>
/// <param name="Prices">Prices by piece of kit, for a piece or a gram.</param>
/// <param name="GramsPerMetre">Mass of a weighed metre of the stock, or null.</param>
/// <param name="TooMuch">Why no class may do it, or null.</param>
internal sealed record PlanChoice(
    PlanSettings Settings,
    IReadOnlyList<string> Wanted,
    IReadOnlyDictionary<string, double> Prices,
    double? GramsPerMetre,
    string? TooMuch);
