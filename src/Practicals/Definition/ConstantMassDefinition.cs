namespace Calx.Practicals.Definition;

/// <summary>When two weighings count as the same, and what a reheat is taken to do.</summary>
public sealed class ConstantMassDefinition(
    string reading, double toleranceInDivisions, double? leastConversion, RoundsBy by, Provenance provenance, FilePosition at)
{
    /// <summary>Id of the repeated reading.</summary>
    public string Reading { get; } = reading;

    /// <summary>Greatest difference that still counts as none, in divisions of the balance; above 0.</summary>
    public double ToleranceInDivisions { get; } = toleranceInDivisions;

    /// <summary>Least fraction of what is left that a reheat is taken to convert, 0 to 1; 0 where some may be out of its reach, so that a
    /// constant mass says nothing of what is left; null where nothing reacts any more once the rounds begin, so that the weighings tell
    /// dryness and not how much has reacted.</summary>
    public double? LeastConversion { get; } = leastConversion;

    /// <summary>How a round is done.</summary>
    public RoundsBy By { get; } = by;

    /// <summary>How far these numbers can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
