using Calx.App.Learning;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Input;

/// <summary>A class to simulate, as it was asked for.</summary>
/// <param name="Circumstances">The practical and what is said of the class.</param>
/// <param name="Conditions">What is said of the class, by id.</param>
/// <param name="Plan">What the class does.</param>
/// <param name="TooMuch">Why no class may do it, or null.</param>
/// <param name="Learned">The learned numbers that it takes, or null.</param>
internal sealed record SimulationChoice(
    Circumstances Circumstances, IReadOnlyList<string> Conditions, SimulationPlan Plan, string? TooMuch, AcceptedNumbers? Learned)
{
    /// <summary>The practical.</summary>
    public Practical Practical => Circumstances.Practical;
}
