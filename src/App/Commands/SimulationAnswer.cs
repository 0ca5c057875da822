using Calx.App.Input;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Commands;

/// <summary>What <c>calx simulate</c> answers.</summary>
/// <param name="Choice">What was asked.</param>
/// <param name="Seed">Which of the possible classes.</param>
/// <param name="Prediction">What a class will probably weigh; null where there is a reason against it.</param>
/// <param name="Drawn">An invented class, or null where none was asked for.</param>
/// <param name="Reason">Why nothing was simulated; null where it was.</param>
internal sealed record SimulationAnswer(
    SimulationChoice Choice, ulong Seed, Prediction? Prediction, SimulatedClass? Drawn, string? Reason)
{
    /// <summary>Each way that some group does; empty where all do it in one.</summary>
    public IReadOnlyList<ArmOutlook> Arms { get; init; } = [];
}

/// <summary>What the groups of one way will probably find.</summary>
/// <param name="Arm">The arm; null for the ordinary way.</param>
/// <param name="Groups">How many groups do it.</param>
/// <param name="Prediction">What they will probably weigh and find.</param>
internal sealed record ArmOutlook(Arm? Arm, int Groups, Prediction Prediction)
{
    /// <summary>Its id, as on the command line.</summary>
    public string Id => Arm?.Id ?? "ordinary";

    /// <summary>What it is called.</summary>
    public string Label => Arm?.Label ?? "ordinary way";
}
