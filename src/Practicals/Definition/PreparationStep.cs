namespace Calx.Practicals.Definition;

/// <summary>Something that a technician prepares.</summary>
public sealed class PreparationStep(string say, double minutes, double minutesPerGroup, string? step, Provenance provenance, FilePosition at)
{
    /// <summary>What is done.</summary>
    public string Say { get; } = say;

    /// <summary>Minutes that it takes however many groups there are.</summary>
    public double Minutes { get; } = minutes;

    /// <summary>Minutes more for each group.</summary>
    public double MinutesPerGroup { get; } = minutesPerGroup;

    /// <summary>Id of the lesson's step that it saves, or null: it is done only where the plan has it prepared.</summary>
    public string? Step { get; } = step;

    /// <summary>How far its minutes can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
