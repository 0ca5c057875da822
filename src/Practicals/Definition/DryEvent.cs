using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A share of the free water of a place is driven off.</summary>
/// <param name="In">Id of the place.</param>
/// <param name="Share">The share, 0 to 1, a formula over parameters.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record DryEvent(string In, Expression Share, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [In];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [Share];
}
