namespace Calx.Practicals.Definition;

/// <summary>A drawing of the apparatus, told by what stands on, in, under or beside what.</summary>
public sealed class Drawing(string id, string label, IReadOnlyList<string> steps, IReadOnlyList<DrawnPart> shows, FilePosition at)
{
    /// <summary>Its id, unique among the drawings.</summary>
    public string Id { get; } = id;

    /// <summary>What it shows, for people: the words above or under it.</summary>
    public string Label { get; } = label;

    /// <summary>Ids of the steps of the lesson that it belongs to; may be empty.</summary>
    public IReadOnlyList<string> Steps { get; } = steps;

    /// <summary>What stands on the bench, from left to right, each with all that it carries.</summary>
    public IReadOnlyList<DrawnPart> Shows { get; } = shows;

    /// <summary>Every part of it.</summary>
    public IEnumerable<DrawnPart> Parts => Shows.SelectMany(part => part.All);

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
