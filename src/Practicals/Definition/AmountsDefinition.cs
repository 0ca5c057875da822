namespace Calx.Practicals.Definition;

/// <summary>Which amounts of the sample a plan looks at, and what more of it does.</summary>
public sealed class AmountsDefinition(
    double usualInGrams,
    double leastInGrams,
    double? fitsInGrams,
    IReadOnlyDictionary<string, double> grows,
    Provenance provenance,
    FilePosition at)
{
    /// <summary>The usual sample, to which the practical's rates and times belong; above 0.</summary>
    public double UsualInGrams { get; } = usualInGrams;

    /// <summary>The smallest sample that a plan looks at; above 0.</summary>
    public double LeastInGrams { get; } = leastInGrams;

    /// <summary>The largest that the vessel takes, or null where the limits say enough.</summary>
    public double? FitsInGrams { get; } = fitsInGrams;

    /// <summary>For each cause that comes oftener with more sample the power of (sample / usual sample) with which its rate
    /// goes.</summary>
    public IReadOnlyDictionary<string, double> Grows { get; } = grows;

    /// <summary>How far these numbers can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
