namespace Calx.Practicals.Definition;

/// <summary>A statement that the class is to come to.</summary>
public sealed class ConclusionDefinition(string id, string label, FilePosition at)
{
    /// <summary>Its id, unique among the conclusions.</summary>
    public string Id { get; } = id;

    /// <summary>The statement, without a full stop.</summary>
    public string Label { get; } = label;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
