namespace Calx.Practicals.Definition;

/// <summary>What a plan may do with a step.</summary>
public sealed class StepFreedom(
    string? optional, string? gives, bool prepared, OtherLesson elsewhere, string? during, string? alongside)
{
    /// <summary>What may be left out, by a word of the file's own: all steps with the same word go together. Null where the
    /// step belongs to the practical.</summary>
    public string? Optional { get; } = optional;

    /// <summary>Id of the condition that holds of the class when the step is done, by whomever; or null.</summary>
    public string? Gives { get; } = gives;

    /// <summary>Whether a technician can do it before the lesson.</summary>
    public bool Prepared { get; } = prepared;

    /// <summary>Which other lesson may take it over.</summary>
    public OtherLesson Elsewhere { get; } = elsewhere;

    /// <summary>Id of the earlier step during which it is done; null where it has its own time.</summary>
    public string? During { get; } = during;

    /// <summary>Id of the earlier step during which it could be done; or null.</summary>
    public string? Alongside { get; } = alongside;
}
