namespace Calx.Practicals.Definition;

/// <summary>A variant that some groups do: open or closed, another concentration. It changes parameters.</summary>
public sealed class Arm(
    string id, string label, double? share, IReadOnlyList<ParameterSetting> set, Provenance provenance, FilePosition at)
{
    /// <summary>Its id, unique among the arms.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Share of a simulated class's groups that do it, above 0 up to 1; null where all ways have as many groups.</summary>
    public double? Share { get; } = share;

    /// <summary>What it changes.</summary>
    public IReadOnlyList<ParameterSetting> Set { get; } = set;

    /// <summary>How far its laws can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>The source of its laws, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
