using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>Holds the class's key quantity against the accepted value.</summary>
internal static class AcceptedComparison
{
    /// <summary>The comparison, with the causes that pull the way the class lies.</summary>
    public static AcceptedResult Of(Practical practical, IdealRun ideal, IReadOnlyList<ClassQuantity> pooled, EngineLanguage language)
    {
        string keyId = practical.Findings.Key;
        ClassQuantity? key = pooled.FirstOrDefault(q => q.Quantity.Id == keyId);
        if (key is null)
        {
            string label = practical.Quantities.First(q => q.Id == keyId).Label;
            return new AcceptedResult.None(new ConclusionTexts(language).NothingToCompare(label));
        }

        if (practical.Findings.NoAccepted is string reason)
        {
            return new AcceptedResult.None(reason);
        }

        double accepted = ideal.Accepted(keyId);
        double distance = (key.Value - accepted) / key.StandardUncertainty;
        double p = 2 * StudentT.Cumulative(-Math.Abs(distance), key.DegreesOfFreedom);
        var result = new AcceptedResult.Compared(key, accepted, distance, p, []);
        return result.IsBiased
            ? new AcceptedResult.Compared(key, accepted, distance, p, Pulling(practical, ideal, Math.Sign(distance)))
            : result;
    }

    private static FaultDefinition[] Pulling(Practical practical, IdealRun ideal, int direction) =>
        [.. practical.Faults.Where(f => ideal.DirectionOf(f) == direction).OrderByDescending(f => f.Rate)];
}
