using Calx.Practicals.Definition;
using Calx.Practicals.Watching;

namespace Calx.App.Pages.Students;

/// <summary>One place on a group's way through the practical: what fills its screen.</summary>
/// <param name="Kind">What it does there.</param>
/// <param name="Step">The step, or null.</param>
/// <param name="Cautions">What to take care of, the most urgent first.</param>
public sealed record Place(PlaceKind Kind, LessonStep? Step, IReadOnlyList<string> Cautions)
{
    /// <summary>The reading taken there, or else the next one, or null.</summary>
    public NextReading? Reading { get; init; }

    /// <summary>The step that follows when it is done, or null.</summary>
    public LessonStep? Following { get; init; }

    /// <summary>Which heating it belongs to, from 1; 0 for none.</summary>
    public int Heating { get; init; }

    /// <summary>Whether a flame burns.</summary>
    public bool HasFlame { get; init; }

    /// <summary>Minutes from flame out until it is cool enough to weigh, where something cools there; else null.</summary>
    public double? CoolingMinutes { get; init; }
}
