namespace Calx.Practicals.Model.Faults;

/// <summary>
/// How probable each set of faults is before anything is weighed. Faults strike independently at their rates; groups
/// with three or more at once are left out (docs/methods/causes.md), and what remains is scaled to 1.
/// </summary>
public sealed class FaultPrior
{
    /// <summary>Most faults at work in one group.</summary>
    public const int MostAtOnce = 2;

    /// <summary>Works out the probabilities.</summary>
    /// <param name="circumstances">The class's circumstances.</param>
    public FaultPrior(Circumstances circumstances)
    {
        ArgumentNullException.ThrowIfNull(circumstances);
        int count = circumstances.Practical.Faults.Count;
        double[] odds = [.. Enumerable.Range(0, count).Select(f => Odds(circumstances.RateOf(f)))];
        var sets = new List<(FaultSet Set, double Weight)> { (FaultSet.None, 1) };
        for (int a = 0; a < count; a++)
        {
            sets.Add((FaultSet.Of(a), odds[a]));
            for (int b = 0; b < a; b++)
            {
                sets.Add((FaultSet.Of(b, a), odds[a] * odds[b]));
            }
        }

        double total = sets.Sum(s => s.Weight);
        Sets = [.. sets.Where(s => s.Weight > 0).OrderBy(s => s.Set.Count).ThenBy(s => s.Set.Bits).Select(s => (s.Set, s.Weight / total))];
    }

    /// <summary>Every set of at most two faults that can happen, with its probability: none first, then single faults, then
    /// pairs.</summary>
    public IReadOnlyList<(FaultSet Set, double Probability)> Sets { get; }

    /// <summary>A rate of 1 would leave no group without the fault; it is taken as all but one in a million.</summary>
    private static double Odds(double rate) => Math.Min(rate, 1 - 1e-6) / (1 - Math.Min(rate, 1 - 1e-6));
}
