using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A share of what a place holds is lost: spat out, spilled, brushed off.</summary>
/// <param name="In">Id of the place.</param>
/// <param name="Materials">Ids of the materials lost; empty for all of them and the free water.</param>
/// <param name="Share">The share lost, 0 to 1, a formula over parameters.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record LoseEvent(
    string In, IReadOnlyList<string> Materials, Expression Share, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [In];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [Share];
}
