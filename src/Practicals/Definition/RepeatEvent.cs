using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>Events done again and again.</summary>
/// <param name="Most">Most rounds, from 1.</param>
/// <param name="Until">When it ends before.</param>
/// <param name="Do">The events of one round, in order.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record RepeatEvent(
    int Most, StopRule Until, IReadOnlyList<ProcedureEvent> Do, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [.. Do.SelectMany(e => e.PlacesChanged).Distinct()];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [];
}
