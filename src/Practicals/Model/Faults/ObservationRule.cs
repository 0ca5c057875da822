using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Faults;

/// <summary>How probable it is that something is seen and noted, given the causes that count: those for which the practical gives a
/// probability act independently, and where there is none of them it is seen with the probability of 'otherwise'.</summary>
internal static class ObservationRule
{
    /// <summary>Share of what is seen that a group writes down, where the class notes observations at all (judgement).</summary>
    private const double WrittenDown = 0.5;

    /// <summary>The probability, 0 to 1, that it is seen and written down.</summary>
    public static double Noted(Practical practical, Observation observation, FaultSet counting) =>
        WrittenDown * Seen(practical, observation, counting);

    /// <summary>The probability, 0 to 1, that it is seen by whoever looks for it.</summary>
    public static double Seen(Practical practical, Observation observation, FaultSet counting)
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
