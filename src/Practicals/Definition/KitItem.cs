namespace Calx.Practicals.Definition;

/// <summary>What a group needs on its bench.</summary>
public sealed class KitItem(
    string id, string label, double perGroup, string? unit, double spareShare, bool flame, FilePosition at)
{
    /// <summary>Its id, unique in the kit.</summary>
    public string Id { get; } = id;

    /// <summary>What it is, for the technician.</summary>
    public string Label { get; } = label;

    /// <summary>How much a group needs, in <see cref="Unit"/>; above 0.</summary>
    public double PerGroup { get; } = perGroup;

    /// <summary>Its unit, or null where it is counted.</summary>
    public string? Unit { get; } = unit;

    /// <summary>Spares on top, as a share of the class's need, from 0.</summary>
    public double SpareShare { get; } = spareShare;

    /// <summary>Whether it burns with a naked flame.</summary>
    public bool Flame { get; } = flame;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
