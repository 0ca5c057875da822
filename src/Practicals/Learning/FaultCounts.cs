using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Learning;

/// <summary>
/// In how many groups of a class each fault of a practical probably happened. What findings call a cause also has to count, and a rate
/// is of all groups in which it happens: so here a fault is at work whether it counts or not. It starts from the practical's own rates;
/// from learned ones the same readings would count twice. A class of the file's own kind has the file's rates on average. Made ready once for all lessons with the same conditions.
/// </summary>
public sealed class FaultCounts
{
    private readonly Practical practical;
    private readonly CauseModel model;
    private readonly HashSet<string> replaced;
    private readonly double[] unthinned;

    /// <summary>Makes the model ready.</summary>
    /// <param name="practical">The practical as its file has it.</param>
    /// <param name="conditions">Ids of what holds of the class. A rate that one of them replaces is not the ordinary one, so nothing is said
    /// of it.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    public FaultCounts(Practical practical, IReadOnlyList<string> conditions, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(conditions);
        ArgumentNullException.ThrowIfNull(weights);
        this.practical = practical;
        var circumstances = new Circumstances(practical, conditions);
        model = new CauseModel(circumstances, weights, EngineLanguage.British);
        unthinned = Unthinned(circumstances);
        replaced = [.. practical.Conditions.Where(c => conditions.Contains(c.Id)).SelectMany(c => c.Rates.Keys)];
    }

    /// <summary>Counts them.</summary>
    /// <param name="readings">The class's own readings; none that was simulated.</param>
    public IReadOnlyList<FaultSeen> Of(ClassReadings readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        Classmates classmates = model.ClassmatesOf(readings.Groups);
        double[][] atWork = new double[readings.Groups.Count][];
        Parallel.For(0, atWork.Length, i => atWork[i] = model.Of(readings.Groups[i], readings.Balance, classmates).AtWork());
        return
        [
            .. practical.Faults.Select((fault, f) => new FaultSeen(fault.Cause, atWork.Length, Math.Min(atWork.Length, unthinned[f] * atWork.Sum(shares => shares[f]))))
                .Where(seen => !replaced.Contains(seen.Cause)),
        ];
    }

    /// <summary>The model leaves out groups with three or more faults at once, so that a fault is at work in fewer of its groups than the
    /// fault's rate says: by how much, at the rates from which it starts.</summary>
    private static double[] Unthinned(Circumstances circumstances)
    {
        IReadOnlyList<(FaultSet Set, double Probability)> sets = new FaultPrior(circumstances).Sets;
        return
        [
            .. Enumerable.Range(0, circumstances.Practical.Faults.Count).Select(f =>
                sets.Where(s => s.Set.Has(f)).Sum(s => s.Probability) is double share and > 0 ? circumstances.RateOf(f) / share : 1),
        ];
    }
}
