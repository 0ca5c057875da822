using Calx.Practicals.Definition;

namespace Calx.Practicals.Watching;

/// <summary>Where a group stands, as far as its readings, its flame and what it said tell.</summary>
public sealed class GroupNow
{
    internal GroupNow(GroupAtWork group, GroupStanding standing, IReadOnlyList<string> cautions, NextReading? next, double? coolEnoughAt)
    {
        Group = group.Number;
        Trial = group.Trial;
        Step = standing.Step;
        Following = standing.Following;
        SinceMinute = standing.Since;
        Heating = standing.Heating;
        Heat = standing.Heat;
        AwaitsDecision = standing.AwaitsDecision;
        IsDone = standing.IsDone;
        PassedOver = standing.PassedOver;
        Cautions = cautions;
        Next = next;
        CoolEnoughAt = coolEnoughAt;
    }

    /// <summary>The group's number.</summary>
    public int Group { get; }

    /// <summary>Its trial, from 1.</summary>
    public int Trial { get; }

    /// <summary>The step that it is at; null where it is done or away.</summary>
    public LessonStep? Step { get; }

    /// <summary>The step that follows when the group taps 'done'; null where a reading ends the step, or nothing follows.</summary>
    public LessonStep? Following { get; }

    /// <summary>The minute since which it is at that step as far as is known, or null where nothing is.</summary>
    public double? SinceMinute { get; }

    /// <summary>Which heating of the trial the step belongs to, from 1; 0 where to none.</summary>
    public int Heating { get; }

    /// <summary>Where the trial stands with its heating.</summary>
    public HeatState Heat { get; }

    /// <summary>Whether it has weighed after a heating and has neither gone on nor decided to heat again or to stop.</summary>
    public bool AwaitsDecision { get; }

    /// <summary>Whether it is done with everything, or has nothing to weigh.</summary>
    public bool IsDone { get; }

    /// <summary>Names of readings that a later one has overtaken: they are missing.</summary>
    public IReadOnlyList<string> PassedOver { get; }

    /// <summary>What to take care of at this step, the most urgent first, a sentence each.</summary>
    public IReadOnlyList<string> Cautions { get; }

    /// <summary>The first of them, or null.</summary>
    public string? Caution => Cautions.Count > 0 ? Cautions[0] : null;

    /// <summary>The reading that it takes next in this trial, or null where none is left.</summary>
    public NextReading? Next { get; }

    /// <summary>The minute from which what was heated is cool enough to weigh; null where nothing hot waits to be weighed, or nobody
    /// said when the flame was put out.</summary>
    public double? CoolEnoughAt { get; }

    /// <summary>Minutes until it is cool enough to weigh, 0 where it is; null as <see cref="CoolEnoughAt"/>.</summary>
    public double? MinutesToCool(double now) => CoolEnoughAt is double minute ? Math.Max(0, minute - now) : null;
}
