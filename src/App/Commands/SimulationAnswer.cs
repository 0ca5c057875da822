using Calx.App.Input;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Commands;

/// <summary>What <c>calx simulate</c> answers.</summary>
/// <param name="Choice">What was asked.</param>
/// <param name="Seed">Which of the possible classes.</param>
/// <param name="Prediction">What a class will probably weigh; null where there is a reason against it.</param>
/// <param name="Drawn">An invented class, or null where none was asked for.</param>
/// <param name="Reason">Why nothing was simulated; null where it was.</param>
internal sealed record SimulationAnswer(
    SimulationChoice Choice, ulong Seed, Prediction? Prediction, SimulatedClass? Drawn, string? Reason);
