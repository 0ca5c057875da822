namespace Calx.Practicals.Definition;

/// <summary>A hazard with its control. It never replaces the employer's risk assessment.</summary>
public sealed class Hazard(string of, string? material, string hazard, string control, GhsClassification? ghs, Provenance provenance, FilePosition at)
{
    /// <summary>What is hazardous, in words.</summary>
    public string Of { get; } = of;

    /// <summary>Id of the material that it is of, or null where it is of a thing or an act.</summary>
    public string? Material { get; } = material;

    /// <summary>What can happen.</summary>
    public string Harm { get; } = hazard;

    /// <summary>What is done about it.</summary>
    public string Control { get; } = control;

    /// <summary>How the material is classified, or null where the file does not say.</summary>
    public GhsClassification? Ghs { get; } = ghs;

    /// <summary>How far it can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Its source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
