namespace Calx.Practicals.Definition;

/// <summary>Something that a group or its teacher can still do to tell causes apart.</summary>
public sealed class ActionDefinition(
    string id,
    string label,
    ActionKind kind,
    double minutes,
    string? part,
    string? observation,
    bool teacherOnly,
    Provenance provenance,
    FilePosition at)
{
    /// <summary>Its id, unique among the actions.</summary>
    public string Id { get; } = id;

    /// <summary>What to do, for people: an imperative clause.</summary>
    public string Label { get; } = label;

    /// <summary>What it tells.</summary>
    public ActionKind Kind { get; } = kind;

    /// <summary>How long it takes, above 0.</summary>
    public double Minutes { get; } = minutes;

    /// <summary>Id of the part taken off, for <see cref="ActionKind.WithoutPart"/>; else null.</summary>
    public string? Part { get; } = part;

    /// <summary>Id of the observation looked for, for <see cref="ActionKind.Look"/>; else null.</summary>
    public string? Observation { get; } = observation;

    /// <summary>Whether only the teacher does it.</summary>
    public bool TeacherOnly { get; } = teacherOnly;

    /// <summary>How far its minutes can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
