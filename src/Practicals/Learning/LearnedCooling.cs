using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>
/// A hot vessel cools as it does, however impatient a class was: groups that weighed early show no faster cooling. The page that
/// counts down to 'cool enough' goes by these times, so what past lessons say may make them longer and never shorter.
/// </summary>
internal static class LearnedCooling
{
    /// <summary>Whether a step is the cooling of something hot.</summary>
    public static bool IsCooling(Practical practical, LessonStep step) => LessonRoute.Cools(practical, step);

    /// <summary>The times that may be taken over.</summary>
    public static StepMinutes Kept(Practical practical, LessonStep step, StepMinutes learned) => !IsCooling(practical, step) ? learned : new StepMinutes(
        Math.Max(learned.Least, step.Minutes.Least), Math.Max(learned.Likely, step.Minutes.Likely), Math.Max(learned.Most, step.Minutes.Most));
}
