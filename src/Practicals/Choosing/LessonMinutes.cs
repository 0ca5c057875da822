using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Choosing;

/// <summary>How long a lesson with a practical takes one group by the likely minutes of its steps, waiting for others left out: enough to choose by; a
/// plan knows the class.</summary>
/// <param name="Whole">All of it, in min: one trial, heated twice where it is heated again.</param>
/// <param name="Shortest">Without what another lesson or a technician can take over, and what can be done meanwhile.</param>
public sealed record LessonMinutes(double Whole, double Shortest)
{
    private const int UsualRounds = 2;

    /// <summary>Of a practical.</summary>
    public static LessonMinutes Of(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        int rounds = Math.Min(UsualRounds, PlanSettings.MostHeatings(practical));
        return new LessonMinutes(
            practical.Steps.Sum(s => s.Place.Freedom.During is null ? Minutes(s, rounds) : 0),
            practical.Steps.Sum(s => s.Place.Freedom is { During: null, Alongside: null, Prepared: false, Elsewhere: OtherLesson.None } ? Minutes(s, rounds) : 0));
    }

    private static double Minutes(LessonStep step, int rounds) => step.Minutes.Likely * step.Place.Round switch
    {
        StepRound.Again => rounds - 1,
        StepRound.Each => rounds,
        _ => 1,
    };
}
