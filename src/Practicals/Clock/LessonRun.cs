using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>Runs one lesson after another of one plan. One belongs to one thread; a lesson follows from the seed and its number
/// alone.</summary>
internal sealed class LessonRun
{
    private readonly LessonRoute route;
    private readonly PlanSettings settings;
    private readonly LessonRules rules;
    private readonly ReheatDraws? reheats;
    private readonly WorkSimulation simulation;
    private readonly RouteState[] groups;
    private readonly NextActivity next;
    private readonly LessonTimes times;
    private readonly bool stepwise;
    private ulong seed;
    private LessonStart? start;
    private int lesson;
    private int spares;
    private int heatings;
    private double flameOut;
    private double weighed;

    /// <summary>Prepares it.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="route">Its route.</param>
    /// <param name="rules">What it goes by.</param>
    /// <param name="reheats">How often groups heat; null for as often as planned.</param>
    /// <param name="trace">Where every step is noted, or null. Steps that need nothing shared are then taken one by one, which
    /// changes no time.</param>
    /// <param name="pace">How many times as long as planned the class takes for all but cooling.</param>
    public LessonRun(
        PlanSettings settings, LessonRoute route, LessonRules rules, ReheatDraws? reheats, List<WorkSpan>? trace = null, double pace = 1)
    {
        this.settings = settings;
        this.route = route;
        this.rules = rules;
        this.reheats = reheats;
        stepwise = trace is not null;
        simulation = new WorkSimulation([.. route.Things.Select(t => t.Units)], route.Needs, settings.Groups) { Trace = trace };
        groups = [.. Enumerable.Range(0, settings.Groups).Select(_ => new RouteState())];
        Minutes = new GroupMinutes[settings.Groups];
        OpeningMinutes = new double[route.Opening.Length];
        times = new LessonTimes(settings, route, pace);
        next = Next;
    }

    /// <summary>When the class was through with what it does together at the beginning of the last lesson.</summary>
    public double OpeningEnd { get; private set; }

    /// <summary>How long each step of the opening took in the last lesson.</summary>
    public double[] OpeningMinutes { get; }

    /// <summary>What the last calls are reckoned from, of the last lesson.</summary>
    public GroupMinutes[] Minutes { get; }

    /// <summary>How the shared things were used in the last lesson.</summary>
    public IReadOnlyList<SharedUse> Shared => simulation.Shared;

    /// <summary>Told of every step of a group as it ends: who, where in the route, and when; or null.</summary>
    public Action<int, RouteState, double>? Ended { get; set; }

    /// <summary>Runs a lesson from its first bell.</summary>
    public LessonOutcome Run(ulong seedOfAll, int number)
    {
        Begin(seedOfAll, number, null);
        for (int i = 0; i < route.Opening.Length; i++)
        {
            OpeningMinutes[i] = times.Of(-1, route.Opening[i], groups[0]);
            OpeningEnd += OpeningMinutes[i];
        }

        return Go(0, null);
    }

    /// <summary>Runs what is left of a lesson, from where its groups are.</summary>
    public LessonOutcome Run(ulong seedOfAll, int number, LessonStart from)
    {
        Begin(seedOfAll, number, from);
        OpeningEnd = from.OpeningEnd;
        flameOut = from.FlameOut;
        return Go(from.Minute, from.Order);
    }

    private void Begin(ulong seedOfAll, int number, LessonStart? from)
    {
        (seed, lesson, start) = (seedOfAll, number, from);
        times.Begin(seed, lesson);
        (spares, heatings, flameOut, weighed, OpeningEnd) = (rules.Spares, 0, 0, 0, 0);
    }

    private LessonOutcome Go(double minute, int[]? order)
    {
        for (int g = 0; g < groups.Length; g++)
        {
            groups[g].Clear();
            Minutes[g] = default;
            if (rules.BreakShare > 0 && times.Breaking(g) is double even && even < rules.BreakShare)
            {
                // The same number says in which trial and heating: what is left of it is evenly spread again.
                double rest = even / rules.BreakShare * settings.Trials;
                groups[g].BreaksInTrial = (int)rest;
                groups[g].BreaksInRound = (int)((rest - (int)rest) * settings.Heatings);
            }
        }

        double end = simulation.Run(next, minute, order);
        return new LessonOutcome(end, flameOut, weighed, groups.Count(g => g.HasJoined), heatings);
    }

    private Activity Next(int person, double minute)
    {
        RouteState group = groups[person];
        double busy = 0;
        if (group.Now is RouteStep ended)
        {
            group.Now = null;
            busy = End(person, group, ended, minute);
        }
        else if (group.Part == RoutePart.Start)
        {
            if (start?.Groups[person] is GroupStart { IsUnderWay: true } from)
            {
                from.Put(group);
                if (from.Draws is int drawn)
                {
                    times.Redraw(person, seed, drawn);
                }

                heatings += group.Rounds;
                if (from.Resumed(group, StepsOf(group)) is Activity resumed)
                {
                    return resumed;
                }
            }
            else
            {
                busy = StartOf(person) - (start?.Minute ?? 0);
                group.GoTo(RoutePart.Before);
            }
        }

        while (true)
        {
            RouteStep? step = StepOf(group, person, minute + busy);
            bool alone = step is { Together: false, Need: < 0 } && !stepwise;
            if (!alone && busy > 0)
            {
                return Activity.Work(busy);
            }

            if (step is null)
            {
                return Activity.Done;
            }

            Begin(person, group, step, minute + busy);
            group.At++;
            double minutes = times.Of(step.Together ? -1 : person, step, group);
            if (!alone)
            {
                group.Now = step;
                return step.Together ? Activity.Together(minutes, step.Index) : Activity.Work(minutes, step.Need, step.Index);
            }

            busy += minutes;
            busy += End(person, group, step, minute + busy);
        }
    }

    /// <summary>The step that a group comes to, parts of the route that are done left behind; null where nothing is left.</summary>
    private RouteStep? StepOf(RouteState group, int person, double minute)
    {
        while (group.Part != RoutePart.Over)
        {
            RouteStep[] steps = StepsOf(group);
            if (group.At < steps.Length)
            {
                return steps[group.At];
            }

            GoOn(group, person, minute);
        }

        return null;
    }

    /// <summary>The steps of the part of the route that a group is at.</summary>
    public RouteStep[] StepsOf(RouteState group) => group.Part switch
    {
        RoutePart.Before => route.Before,
        RoutePart.TrialBefore => route.TrialBefore,
        RoutePart.Heating => group.Round == 0 ? route.FirstRound : route.AgainRound,
        RoutePart.TrialAfter => route.TrialAfter,
        _ => route.After,
    };

    private (int First, int Last) FlamesOf(RouteState group) => group.Round == 0 ? route.FirstFlames : route.AgainFlames;

    private void GoOn(RouteState group, int person, double minute)
    {
        switch (group.Part)
        {
            case RoutePart.Before:
                BeginTrial(group, person, minute);
                break;
            case RoutePart.TrialBefore:
                group.GoTo(RoutePart.Heating);
                break;
            case RoutePart.Heating when group.Round + 1 < group.Rounds && minute <= rules.LastHeating:
                group.Round++;
                group.GoTo(RoutePart.Heating);
                break;
            case RoutePart.Heating:
                group.GoTo(RoutePart.TrialAfter);
                break;
            case RoutePart.TrialAfter when group.Trial + 1 < settings.Trials:
                group.Trial++;
                BeginTrial(group, person, minute);
                break;
            case RoutePart.TrialAfter:
                group.GoTo(RoutePart.After);
                break;
            default:
                group.GoTo(RoutePart.Over);
                Minutes[person].Ready = Minutes[person].Ready == 0 ? minute : Minutes[person].Ready;
                break;
        }
    }

    private void BeginTrial(RouteState group, int person, double minute)
    {
        int trial = (group.Trial * 8) + Math.Min(group.NewStarts, 7);
        group.Round = 0;
        group.Rounds = route.FirstRound.Length == 0 ? 0 : reheats?.Of(seed, lesson, person, trial) ?? settings.Heatings;
        heatings += group.Rounds;
        group.GoTo(RoutePart.TrialBefore);
        Minutes[person].TrialBegan = minute;
    }

    private void Begin(int person, RouteState group, RouteStep step, double minute)
    {
        if (step.Together && Minutes[person].Ready == 0)
        {
            Minutes[person].Ready = minute;
        }

        if (group.Part == RoutePart.Heating && group.At == FlamesOf(group).First)
        {
            (Minutes[person].HeatBegan, Minutes[person].ReheatBegan) = group.Round == 0 ? (minute, 0) : (Minutes[person].HeatBegan, minute);
        }
    }

    /// <summary>What the end of a step brings about; the minutes that a broken vessel costs at once.</summary>
    private double End(int person, RouteState group, RouteStep step, double minute)
    {
        Ended?.Invoke(person, group, minute);
        if (step.Step.Reading is not null)
        {
            weighed = Math.Max(weighed, minute);
            Minutes[person].LastRead = minute;
            Minutes[person].NextRead = Minutes[person].NextRead == 0 ? minute : Minutes[person].NextRead;
        }

        if (!step.Flame)
        {
            return 0;
        }

        flameOut = Math.Max(flameOut, minute);
        if (group.Part != RoutePart.Heating)
        {
            return 0;
        }

        if (group.Round == 0)
        {
            Minutes[person].HeatEnded = minute;
        }
        else
        {
            Minutes[person].ReheatEnded = minute;
        }

        bool breaks = group.At - 1 == FlamesOf(group).Last && group.Trial == group.BreaksInTrial && group.Round == Math.Min(group.BreaksInRound, group.Rounds - 1);
        return breaks ? Break(person, group, minute) : 0;
    }

    private double Break(int person, RouteState group, double minute)
    {
        group.BreaksInTrial = -1;
        if (spares == 0 || minute > rules.StartAgainBy)
        {
            group.HasJoined = true;
            heatings -= group.Rounds - group.Round - 1;
            group.GoTo(RoutePart.After);
            return 0;
        }

        spares--;
        group.NewStarts++;
        double fetching = times.NewStart(person, group.NewStarts);
        heatings -= group.Rounds - group.Round - 1;
        BeginTrial(group, person, minute + fetching);
        return fetching;
    }

    /// <summary>A latecomer, or a group of the second wave, begins later.</summary>
    private double StartOf(int person) => start?.Groups[person].BeginsAt ?? Start(OpeningEnd, times, person);

    /// <summary>When a group begins its own work.</summary>
    public double Start(double openingEnd, LessonTimes drawn, int person) =>
        openingEnd + (person % 2 == 1 ? settings.StaggerInMinutes : 0) + drawn.Lateness(person);
}
