namespace Calx.Practicals.Definition;

/// <summary>What is done at once where something has gone wrong. Local rules come first.</summary>
public sealed class EmergencyAction(string when, string act, Provenance provenance, FilePosition at)
{
    /// <summary>What has happened.</summary>
    public string When { get; } = when;

    /// <summary>What is done.</summary>
    public string Act { get; } = act;

    /// <summary>How far it can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Its source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
