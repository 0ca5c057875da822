using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Watching;

/// <summary>How long a group waits between flame out and weighing, as its page counts down and its sheet says.</summary>
public static class CoolEnough
{
    /// <summary>Minutes from flame out until what was heated is cool enough for the finest of the plan's balances; null where
    /// nothing cools before a weighing.</summary>
    /// <param name="plan">The plan.</param>
    public static double? MinutesFor(PlanSettings plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        LessonStep? cools = null;
        foreach (LessonStep step in plan.Practical.Steps.Where(s => plan.IsInLesson(s) && s.Place.Freedom.During is null && s.Place.Round != StepRound.None))
        {
            if (step.Reading is not null)
            {
                break;
            }

            cools = step;
        }

        if (cools is null || IsHeated(plan.Practical, cools))
        {
            return null;
        }

        StepMinutes minutes = plan.Times.GetValueOrDefault(cools.Id) ?? cools.Minutes;
        return new CoolingRule(plan.Practical).MinutesFor(plan.Balances.MinBy(b => b.ResolutionInGrams)!, minutes.Least, minutes.Most);
    }

    private static bool IsHeated(Practical practical, LessonStep step) => step.Kit.Keys.Any(held => practical.Kit.Any(k => k.Flame && k.Id == held));
}
