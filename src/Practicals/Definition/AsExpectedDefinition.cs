using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>When a group is as expected: no cause moved the key difference by more than so many divisions of the balance or
/// such a share of the change that is due, whichever is larger.</summary>
public sealed class AsExpectedDefinition(
    Expression difference, double divisions, double share, Provenance provenance, FilePosition at)
{
    /// <summary>The key difference, in the unit of the readings: linear in them, and 0 where nothing goes wrong.</summary>
    public Expression Difference { get; } = difference;

    /// <summary>In divisions of the balance, above 0.</summary>
    public double Divisions { get; } = divisions;

    /// <summary>In shares of the change that is due, above 0 up to 1.</summary>
    public double Share { get; } = share;

    /// <summary>How far these numbers can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
