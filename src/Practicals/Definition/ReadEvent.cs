using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A reading is taken.</summary>
/// <param name="Reading">Id of the reading.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record ReadEvent(string Reading, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [];
}
