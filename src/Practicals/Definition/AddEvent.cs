using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A material is put into a place, with its impurities.</summary>
/// <param name="Material">Id of the material.</param>
/// <param name="To">Id of the place.</param>
/// <param name="Mass">Mass of all that is added, impurities included, in g, a formula over parameters.</param>
/// <param name="With">Other materials that come with it; the rest of the mass is the material itself.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record AddEvent(
    string Material, string To, Expression Mass, IReadOnlyList<AddedShare> With, FilePosition At) : ProcedureEvent(At)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> PlacesChanged => [To];

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Formulas => [Mass, .. With.Select(w => w.Share)];
}
