namespace Calx.Practicals.Definition;

/// <summary>Something that a group may have seen, and how likely each cause makes it.</summary>
public sealed class Observation(
    string id,
    string label,
    IReadOnlyDictionary<string, double> likelihood,
    double otherwise,
    IReadOnlyList<string> aliases,
    bool stop,
    bool teacherOnly,
    Provenance provenance,
    FilePosition at)
{
    /// <summary>Its id, unique among the observations.</summary>
    public string Id { get; } = id;

    /// <summary>What was seen, for people.</summary>
    public string Label { get; } = label;

    /// <summary>Probability of seeing it, by cause, 0 to 1.</summary>
    public IReadOnlyDictionary<string, double> Likelihood { get; } = likelihood;

    /// <summary>Probability of seeing it where none of those causes is at work, 0 to 1.</summary>
    public double Otherwise { get; } = otherwise;

    /// <summary>Other words for it in a class's file.</summary>
    public IReadOnlyList<string> Aliases { get; } = aliases;

    /// <summary>Whether it comes before all arithmetic: the group stops and tells the teacher.</summary>
    public bool Stop { get; } = stop;

    /// <summary>Whether students are never asked for it.</summary>
    public bool TeacherOnly { get; } = teacherOnly;

    /// <summary>How far the probabilities can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
