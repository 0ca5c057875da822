using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// What a group noted, as evidence. In a class that notes observations, silence is evidence too, if weak: half of what is
/// seen is not written down. In a class that notes nothing it is none.
/// </summary>
internal sealed class SeenEvidence
{
    private readonly Practical practical;
    private readonly Observation[] noted;
    private readonly Observation[] silent;
    private readonly Dictionary<FaultSet, double> known = [];

    /// <summary>Takes what was noted.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="seen">Ids of the observations noted.</param>
    /// <param name="silenceCounts">Whether the class notes observations at all.</param>
    public SeenEvidence(Practical practical, IReadOnlyList<string> seen, bool silenceCounts)
    {
        this.practical = practical;
        noted = [.. practical.Observations.Where(o => seen.Contains(o.Id) && o.Likelihood.Count > 0)];
        silent =
        [
            .. practical.Observations.Where(o => silenceCounts && !o.Stop && !o.TeacherOnly && !seen.Contains(o.Id)),
        ];
    }

    /// <summary>Natural logarithm of the probability of noting all this, and nothing else, where these causes count.</summary>
    public double LogLikelihood(FaultSet counting)
    {
        if (!known.TryGetValue(counting, out double log))
        {
            known[counting] = log = noted.Sum(o => Math.Log(Math.Max(ObservationRule.Noted(practical, o, counting), 1e-9)))
                + silent.Sum(o => Math.Log(1 - ObservationRule.Noted(practical, o, counting)));
        }

        return log;
    }
}
