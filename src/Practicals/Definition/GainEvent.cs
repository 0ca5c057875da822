using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>Something that does not react gets into a place: soot, grit.</summary>
/// <param name="Mass">Its mass in g, a formula over parameters.</param>
/// <param name="In">Id of the place.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record GainEvent(Expression Mass, string In, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [In];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [Mass];
}
