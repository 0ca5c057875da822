using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>How probable it is that something is noted, given the causes that count: those for which the practical gives a
/// probability act independently, and where there is none of them it is noted with the probability of 'otherwise'.</summary>
internal static class ObservationRule
{
    /// <summary>The probability, 0 to 1.</summary>
    public static double Probability(Practical practical, Observation observation, FaultSet counting)
    {
        double unseen = 1;
        bool any = false;
        foreach (int fault in counting.Faults)
        {
            if (observation.Likelihood.TryGetValue(practical.Faults[fault].Cause, out double likelihood))
            {
                unseen *= 1 - likelihood;
                any = true;
            }
        }

        return any ? 1 - unseen : observation.Otherwise;
    }
}
