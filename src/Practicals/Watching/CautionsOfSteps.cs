using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>What a group takes care of at each step of a plan, as its page says it: for sheets.</summary>
public static class CautionsOfSteps
{
    /// <summary>The cautions by the step's id, the most urgent first; a step at which there is nothing to take care of is not among them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Of(PlanSettings plan, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(plan);
        TrialRoute route = new StandingRule(plan, new LessonRoute(plan, new PlanTables(weights).Durations)).RouteOf(1);
        var cautions = new StepCautions(plan.Practical, route, plan.Language);
        var steps = new Dictionary<string, IReadOnlyList<string>>(StringComparer.Ordinal);
        for (int place = 0; place < route.Places.Count; place++)
        {
            if (cautions.Of(place) is { Count: > 0 } there)
            {
                steps.TryAdd(route.Places[place].Step.Step.Id, there);
            }
        }

        return steps;
    }
}
