using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>The times of one lesson, drawn by where they are used: <see cref="LessonDraws"/>. One belongs to one thread.</summary>
/// <param name="settings">The plan.</param>
/// <param name="route">Its route.</param>
/// <param name="pace">How many times as long as planned the class takes for all but cooling.</param>
internal sealed class LessonTimes(PlanSettings settings, LessonRoute route, double pace = 1)
{
    /// <summary>New starts and heatings that have numbers of their own; beyond them the last ones' are used again.</summary>
    private const int MostNewStarts = 8;
    private const int MostHeatings = 16;

    private readonly LessonDraws[] own = new LessonDraws[settings.Groups];
    private LessonDraws together;

    /// <summary>Begins a lesson.</summary>
    public void Begin(ulong seed, int lesson)
    {
        together = new LessonDraws(seed, lesson);
        Array.Fill(own, together);
    }

    /// <summary>Gives one group the numbers of another lesson.</summary>
    public void Redraw(int person, ulong seed, int lesson) => own[person] = new LessonDraws(seed, lesson);

    /// <summary>Whether and when a group's vessel breaks: evenly drawn.</summary>
    public double Breaking(int person) => Even(person, Use(0, UseOf.Breaking));

    /// <summary>How long a group takes to fetch a spare.</summary>
    public double NewStart(int person, int number) => route.NewStart.QuickQuantile(Even(person, Use(number, UseOf.NewStart)));

    /// <summary>By how much a group is late; 0 for most.</summary>
    public double Lateness(int person) =>
        settings.Practical.Classroom.LateShare is var share && share > 0 && Even(person, Use(0, UseOf.Lateness)) < share
            ? route.LateBy.QuickQuantile(Even(person, Use(1, UseOf.Lateness)))
            : 0;

    /// <summary>How long a step takes, with what is done meanwhile.</summary>
    /// <param name="person">Whose step; -1 for the class's.</param>
    /// <param name="step">The step.</param>
    /// <param name="group">Where the group is; any group for the class's.</param>
    public double Of(int person, RouteStep step, RouteState group)
    {
        int slot = person < 0 ? 0 : Slot(group);
        double own = Draw(person, step, slot);
        double meanwhile = 0;
        foreach (RouteStep other in step.Meanwhile)
        {
            meanwhile += Draw(person, other, slot);
        }

        if (step.MeanwhileOnce.Length > 0 && (step.Step.Place.Per != StepPer.Trial || IsLastTime(group)))
        {
            foreach (RouteStep other in step.MeanwhileOnce)
            {
                meanwhile += Draw(person, other, 0);
            }
        }

        return Math.Max(own, meanwhile);
    }

    private double Even(int person, int use) => (person < 0 ? together : own[person]).Even(person, use);

    /// <summary>How many times as long as with the usual sample in a class of the plan's pace.</summary>
    public double FactorOf(RouteStep step) => step.Factor * (step.Cools ? 1 : pace);

    /// <summary>What is left of a step that goes on alone, once it has lasted so long; 0 where it should be over.</summary>
    public double Rest(int person, RouteStep step, RouteState group, double lasted)
    {
        double factor = FactorOf(step);
        double below = step.Minutes.Cumulative(lasted / factor);
        if (below >= 1)
        {
            return 0;
        }

        // The law of those that last longer, by the number that the step has anyway.
        double even = Even(person, Slot(group) + step.Index);
        double whole = below <= 0 ? step.Minutes.QuickQuantile(even) : step.Minutes.Quantile(Math.Min(below + (even * (1 - below)), 1 - 1e-12));
        return Math.Max(0, (factor * whole) - lasted);
    }

    private double Draw(int person, RouteStep step, int slot) =>
        FactorOf(step) * step.Minutes.QuickQuantile(Even(person, slot + step.Index));

    private bool IsLastTime(RouteState group) => group.Trial + 1 >= settings.Trials && group.Round + 1 >= group.Rounds;

    /// <summary>Where a group's random numbers of this trial and heating begin.</summary>
    private int Slot(RouteState group) => group.Part is RoutePart.Before or RoutePart.After
        ? 0
        : route.StepCount * (1 + group.Round + (MostHeatings * ((group.Trial * MostNewStarts) + Math.Min(group.NewStarts, MostNewStarts - 1))));

    /// <summary>Numbers that belong to no step.</summary>
    private static int Use(int number, UseOf use) => (1 << 24) + (number * 8) + (int)use;

    private enum UseOf
    {
        Breaking,
        NewStart,
        Lateness,
    }
}
