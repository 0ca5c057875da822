using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A gauge takes a value.</summary>
/// <param name="Gauge">Id of the gauge.</param>
/// <param name="To">Its value in its unit, a formula over parameters.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record SetEvent(string Gauge, Expression To, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [To];
}
