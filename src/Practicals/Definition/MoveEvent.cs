using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A share of what one place holds gets into another: poured, filtered, washed.</summary>
/// <param name="From">Id of the place that it leaves.</param>
/// <param name="To">Id of the place that it reaches.</param>
/// <param name="Materials">Ids of the materials moved; empty for all of them and the free water.</param>
/// <param name="Share">The share moved, 0 to 1, a formula over parameters.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record MoveEvent(
    string From, string To, IReadOnlyList<string> Materials, Expression Share, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [From, To];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [Share];
}
