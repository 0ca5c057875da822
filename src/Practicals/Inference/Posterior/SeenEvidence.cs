using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// What a group noted, as evidence. Causes that count and for which the practical gives a probability of seeing it act
/// independently; where none does, it is seen with the probability of 'otherwise'. What was not noted is no evidence:
/// nobody may have looked.
/// </summary>
internal sealed class SeenEvidence
{
    private readonly (double[] Likelihood, double Otherwise)[] noted;

    public SeenEvidence(Practical practical, IReadOnlyList<string> seen) =>
        noted =
        [
            .. practical.Observations.Where(o => seen.Contains(o.Id) && o.Likelihood.Count > 0)
                .Select(o => (practical.Faults.Select(f => o.Likelihood.GetValueOrDefault(f.Cause, double.NaN)).ToArray(), o.Otherwise)),
        ];

    /// <summary>Natural logarithm of the probability of noting all this where these causes count.</summary>
    public double LogLikelihood(FaultSet counting) => noted.Sum(n => Math.Log(Math.Max(Of(n, counting), 1e-9)));

    private static double Of((double[] Likelihood, double Otherwise) observation, FaultSet counting)
    {
        double unseen = 1;
        bool any = false;
        foreach (int fault in counting.Faults)
        {
            if (!double.IsNaN(observation.Likelihood[fault]))
            {
                unseen *= 1 - observation.Likelihood[fault];
                any = true;
            }
        }

        return any ? 1 - unseen : observation.Otherwise;
    }
}
