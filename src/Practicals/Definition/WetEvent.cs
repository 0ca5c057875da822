using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>Free water gets into a place.</summary>
/// <param name="Water">Mass of the water in g, a formula over parameters.</param>
/// <param name="In">Id of the place.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record WetEvent(Expression Water, string In, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [In];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [Water];
}
