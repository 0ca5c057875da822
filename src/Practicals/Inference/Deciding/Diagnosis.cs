using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>From a group's posterior to what a teacher does with it.</summary>
public static class Diagnosis
{
    /// <summary>Works out the decision, the next step and the words of one group.</summary>
    /// <param name="posterior">What probably happened.</param>
    /// <param name="constantMass">What the trade's rule says of the last two weighings, or null.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    public static GroupDiagnosis Of(CausePosterior posterior, ConstantMass? constantMass, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(posterior);
        var outlook = new Outlook(posterior, weights);
        Observation[] seen = [.. posterior.Hidden.Circumstances.Practical.Observations.Where(o => posterior.Problem.Seen.Contains(o.Id))];
        Decision decision = new DecisionRule(outlook, constantMass, seen).Decide();
        NextStep next = new NextStepRule(outlook, seen).Choose();
        return new GroupDiagnosis(
            posterior.Causes,
            posterior.Pairs,
            posterior.Tied,
            next,
            decision,
            TeacherWords.Of(posterior, decision, next),
            StudentWords.Of(posterior, decision));
    }
}
