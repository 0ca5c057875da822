using Calx.Practicals.Definition;

namespace Calx.Practicals.CatchUp;

/// <summary>Causes that no pack has.</summary>
internal static class NeverPlanted
{
    /// <summary>A spill: a lesson stops there whatever was seen (the trade's list of what comes before all arithmetic).</summary>
    private const string Spilled = "spilled";

    /// <summary>
    /// Ids of a practical's causes that are never planted. One of which something is a sign that stops a lesson: nobody is asked to go on
    /// calculating where the right answer is 'stop, tell your teacher'. And slips of the pen: what is printed is what the balance showed.
    /// </summary>
    public static IReadOnlySet<string> Of(Practical practical) => practical.Faults
        .Where(f => f.Effect is FaultEffect.Pen || f.Cause == Spilled || practical.Observations.Any(o => o.Stop && o.Likelihood.ContainsKey(f.Cause)))
        .Select(f => f.Cause).ToHashSet(StringComparer.Ordinal);
}
