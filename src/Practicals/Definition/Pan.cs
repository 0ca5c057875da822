using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>What stands on the pan at a reading.</summary>
public sealed class Pan(IReadOnlyList<string> parts, IReadOnlyList<string> places, Expression? minus)
{
    /// <summary>Ids of the parts.</summary>
    public IReadOnlyList<string> Parts { get; } = parts;

    /// <summary>Ids of the places whose contents are weighed with them.</summary>
    public IReadOnlyList<string> Places { get; } = places;

    /// <summary>A mass in g that the balance does not show, such as that of the air displaced by a swelling bag:
    /// a formula over parameters; or null.</summary>
    public Expression? Minus { get; } = minus;
}
