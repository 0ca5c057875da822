using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A reaction goes on in a place. Products that are of the air leave it.</summary>
/// <param name="Reaction">Id of the reaction.</param>
/// <param name="In">Id of the place.</param>
/// <param name="Progress">How far the reaction goes.</param>
/// <param name="Escapes">Share of the newly made products that leaves though it is not of the air (smoke), 0 to 1, a
/// formula over parameters and gauges; or null where none does.</param>
/// <param name="Cap">Most mass in g of the leaving products that stays after all (a gas that dissolves), a formula over
/// parameters and gauges; or null where none does.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record ReactEvent(
    string Reaction, string In, ReactionProgress Progress, Expression? Escapes, Expression? Cap, FilePosition At)
    : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [In];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [Progress.Amount, .. new[] { Escapes, Cap }.OfType<Expression>()];
}
