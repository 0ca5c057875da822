using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>What went wrong in an invented group, and which of it counts (docs/methods/simulation.md).</summary>
public sealed class SimulatedTruth
{
    internal SimulatedTruth(
        Practical practical, FaultSet faults, FaultSet counting, double[] movedInGrams, double togetherInGrams, double[] values)
    {
        Faults = faults;
        Counting = counting;
        MovedInGrams = movedInGrams;
        TogetherInGrams = togetherInGrams;
        Values = values;
        Causes = [.. counting.Faults.OrderByDescending(f => Math.Abs(movedInGrams[f])).Select(f => practical.Faults[f].Cause)];
    }

    /// <summary>The faults drawn, whether they did much or little.</summary>
    public FaultSet Faults { get; }

    /// <summary>The faults that count, whether they were drawn or are ordinary imperfection that went far.</summary>
    public FaultSet Counting { get; }

    /// <summary>Causes that count, the one that moved most first; empty where the group is as expected.</summary>
    public IReadOnlyList<string> Causes { get; }

    /// <summary>The first cause, or <c>as-expected</c>.</summary>
    public string Cause => Causes.Count == 0 ? Definition.Causes.AsExpected : Causes[0];

    /// <summary>How far each fault, by its place in the practical's list, moved the key difference, in g; for a slip or a
    /// missing part in a weighing that a later one replaced, its own size.</summary>
    public IReadOnlyList<double> MovedInGrams { get; }

    /// <summary>How far all together moved the key difference.</summary>
    public double TogetherInGrams { get; }

    /// <summary>The numbers of the bench: each parameter, in order; those of repeated steps once for each round for which the
    /// practical has numbers.</summary>
    public IReadOnlyList<double> Values { get; }
}
