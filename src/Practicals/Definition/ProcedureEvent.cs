using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>One thing that happens on the bench. The cases are the events of this folder, and there are no others.</summary>
/// <param name="At">Where it stands in the file.</param>
public abstract record ProcedureEvent(FilePosition At)
{
    /// <summary>Ids of the places whose contents it may change; inner events of a repetition included.</summary>
    public abstract IReadOnlyList<string> PlacesChanged { get; }

    /// <summary>Its own formulas over parameters; those of inner events are theirs.</summary>
    public abstract IReadOnlyList<Expression> Formulas { get; }
}
