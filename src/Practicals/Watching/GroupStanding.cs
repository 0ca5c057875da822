using Calx.Practicals.Definition;

namespace Calx.Practicals.Watching;

/// <summary>Where a group stands in its route, with the evidence for it.</summary>
internal sealed class GroupStanding
{
    /// <summary>The place in the trial's route; that many where nothing is left; -1 where the class is still together.</summary>
    public required int Place { get; init; }

    /// <summary>The place behind the last reading; 0 where there is none.</summary>
    public required int Start { get; init; }

    /// <summary>The step, or null.</summary>
    public required LessonStep? Step { get; init; }

    /// <summary>The step behind it, or null.</summary>
    public LessonStep? Following { get; init; }

    /// <summary>Since when, or null where nothing is known.</summary>
    public double? Since { get; init; }

    /// <summary>When the last reading was received, or null.</summary>
    public double? ReadAt { get; init; }

    /// <summary>When the flame was put out that nothing has been weighed after yet, or null.</summary>
    public double? FlameOut { get; init; }

    /// <summary>The place of the step that what was heated cools at, or -1.</summary>
    public int Cooling { get; init; } = -1;

    /// <summary>The heating, from 1; 0 for none.</summary>
    public int Heating { get; init; }

    /// <summary>Where the trial stands with its heating.</summary>
    public HeatState Heat { get; init; }

    /// <summary>Whether the group has to decide.</summary>
    public bool AwaitsDecision { get; init; }

    /// <summary>Whether it has gone on to another heating since its last weighing.</summary>
    public bool HasGoneOn { get; init; }

    /// <summary>Whether nothing was heard of the group itself.</summary>
    public bool IsUnheard { get; init; }

    /// <summary>Whether nothing is left to do.</summary>
    public bool IsDone { get; init; }

    /// <summary>How often it has weighed after a heating.</summary>
    public int Weighed { get; init; }

    /// <summary>Names of readings that a later one has overtaken.</summary>
    public IReadOnlyList<string> PassedOver { get; init; } = [];
}
