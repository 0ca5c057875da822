using Calx.Practicals.Definition;

namespace Calx.Practicals.Planning.Clock;

/// <summary>The times of one lesson, drawn by where they are used: <see cref="LessonDraws"/>. One belongs to one thread.</summary>
internal sealed class LessonTimes(PlanSettings settings, LessonRoute route)
{
    /// <summary>New starts and heatings that have numbers of their own; beyond them the last ones' are used again.</summary>
    private const int MostNewStarts = 8;
    private const int MostHeatings = 16;

    private LessonDraws draws;

    /// <summary>Begins a lesson.</summary>
    public void Begin(ulong seed, int lesson) => draws = new LessonDraws(seed, lesson);

    /// <summary>Whether and when a group's vessel breaks: evenly drawn.</summary>
    public double Breaking(int person) => draws.Even(person, Use(0, UseOf.Breaking));

    /// <summary>How long a group takes to fetch a spare.</summary>
    public double NewStart(int person, int number) => route.NewStart.QuickQuantile(draws.Even(person, Use(number, UseOf.NewStart)));

    /// <summary>By how much a group is late; 0 for most.</summary>
    public double Lateness(int person) =>
        settings.Practical.Classroom.LateShare is var share && share > 0 && draws.Even(person, Use(0, UseOf.Lateness)) < share
            ? route.LateBy.QuickQuantile(draws.Even(person, Use(1, UseOf.Lateness)))
            : 0;

    /// <summary>How long a step takes, with what is done meanwhile.</summary>
    /// <param name="person">Whose step; -1 for the class's.</param>
    /// <param name="step">The step.</param>
    /// <param name="group">Where the group is; any group for the class's.</param>
    public double Of(int person, RouteStep step, GroupAtWork group)
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

    private double Draw(int person, RouteStep step, int slot) =>
        step.Factor * step.Minutes.QuickQuantile(draws.Even(person, slot + step.Index));

    private bool IsLastTime(GroupAtWork group) => group.Trial + 1 >= settings.Trials && group.Round + 1 >= group.Rounds;

    /// <summary>Where a group's random numbers of this trial and heating begin.</summary>
    private int Slot(GroupAtWork group) => group.Part is RoutePart.Before or RoutePart.After
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
