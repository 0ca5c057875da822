namespace Calx.Practicals.Definition;

/// <summary>One part of a drawing, with all that stands on, in, under or beside it or is held by it.</summary>
public sealed class DrawnPart(
    Apparatus kind, string label, DrawnState state, IReadOnlyDictionary<DrawnPlace, IReadOnlyList<DrawnPart>> others, FilePosition at)
{
    /// <summary>What it is.</summary>
    public Apparatus Kind { get; } = kind;

    /// <summary>The word beside the drawing, in lower case unless a name asks for more.</summary>
    public string Label { get; } = label;

    /// <summary>How it is shown.</summary>
    public DrawnState State { get; } = state;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;

    /// <summary>It and every part told with it, itself first, in the order of the file.</summary>
    public IEnumerable<DrawnPart> All => [this, .. Enum.GetValues<DrawnPlace>().SelectMany(Others).SelectMany(other => other.All)];

    /// <summary>What is at a place, in the order of the file; often nothing.</summary>
    public IReadOnlyList<DrawnPart> Others(DrawnPlace place) => others.GetValueOrDefault(place, []);

    /// <summary>The part at a place that takes one, or null.</summary>
    public DrawnPart? Other(DrawnPlace place) => Others(place) is [DrawnPart first, ..] ? first : null;
}
