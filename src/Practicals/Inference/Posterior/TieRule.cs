using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Causes that the weighings cannot tell apart: those whose single explanation fits the readings, what was seen left aside,
/// as well as the best one within a factor of three, and which are not improbable altogether.
/// </summary>
internal static class TieRule
{
    /// <summary>Evidence within this factor is barely worth a mention (H. Jeffreys, Theory of Probability, grades of
    /// evidence: below half a power of ten).</summary>
    private static readonly double Factor = Math.Sqrt(10);

    private const double LeastProbability = 0.05;

    public static IReadOnlyList<TiedCauses> Of(CausePosterior posterior)
    {
        var faults = posterior.Hidden.Circumstances.Practical.Faults;
        CauseProbability[] named = [.. posterior.Causes.Where(c => c.Cause != Definition.Causes.AsExpected && c.Probability >= LeastProbability)];
        if (named.Length < 2)
        {
            return [];
        }

        Dictionary<string, double> fits = named.ToDictionary(
            c => c.Cause, c => Fit(posterior, Enumerable.Range(0, faults.Count).First(f => faults[f].Cause == c.Cause)), StringComparer.Ordinal);
        double best = fits.Values.Max();
        CauseProbability[] tied = [.. named.Where(c => fits[c.Cause] * Factor >= best)];
        return tied.Length < 2 ? [] : [new TiedCauses([.. tied.Select(c => c.Cause)], Math.Min(1, tied.Sum(c => c.Probability)))];
    }

    /// <summary>How well the readings fit a cause that counts: its posterior weight over its prior probability of
    /// counting.</summary>
    private static double Fit(CausePosterior posterior, int fault)
    {
        double weight = posterior.Atoms.Where(a => a.Counting == FaultSet.Of(fault)).Sum(a => a.Weight);
        double prior = posterior.Hidden.Prior.Sets.First(s => s.Set == FaultSet.Of(fault)).Probability;
        return weight / prior;
    }
}
