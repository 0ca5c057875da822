namespace Calx.Practicals.Definition;

/// <summary>Something that stands on the pan and does not react: a crucible, a lid, a dish.</summary>
public sealed class Part(string id, string label, MassRange mass, Provenance provenance, FilePosition at)
{
    /// <summary>Its id, unique among parts and places.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>What it weighs.</summary>
    public MassRange Mass { get; } = mass;

    /// <summary>How far its masses can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>The source of its masses, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
