namespace Calx.Practicals.Definition;

/// <summary>A step of the lesson, with its time and the shared kit that it holds meanwhile.</summary>
public sealed class LessonStep(
    string id,
    string label,
    StepMinutes minutes,
    IReadOnlyDictionary<string, int> kit,
    string? reading,
    StepPlace place,
    Provenance provenance,
    FilePosition at)
{
    /// <summary>The id by which steps hold a balance.</summary>
    public const string Balance = "balance";

    /// <summary>The id by which steps hold the teacher's attention; every other kit is the practical's own.</summary>
    public const string Teacher = "teacher";

    /// <summary>Its id, unique among the steps.</summary>
    public string Id { get; } = id;

    /// <summary>What is done, for people.</summary>
    public string Label { get; } = label;

    /// <summary>How long it takes with the usual sample.</summary>
    public StepMinutes Minutes { get; } = minutes;

    /// <summary>How many of each kit a group holds meanwhile, by kit id, <see cref="Balance"/> or <see cref="Teacher"/>.</summary>
    public IReadOnlyDictionary<string, int> Kit { get; } = kit;

    /// <summary>Id of the reading that it takes, or null.</summary>
    public string? Reading { get; } = reading;

    /// <summary>Where it stands in the lesson, and where else it could.</summary>
    public StepPlace Place { get; } = place;

    /// <summary>How far its times can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
