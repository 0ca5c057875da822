using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>The points of one set of faults.</summary>
/// <param name="Set">The faults at work.</param>
/// <param name="First">Number of its first point.</param>
/// <param name="Count">How many points it has.</param>
/// <param name="LogWeight">Natural logarithm of each point's prior probability.</param>
internal sealed record HiddenBlock(FaultSet Set, int First, int Count, double LogWeight);
