namespace Calx.Practicals.Definition;

/// <summary>Something that can go wrong in a group, how often, and what it does.</summary>
public sealed class FaultDefinition(
    string cause,
    string label,
    double rate,
    FaultEffect effect,
    string? caution,
    Provenance provenance,
    FilePosition at)
{
    /// <summary>Its cause, one of <see cref="Causes.All"/>; unique among the faults.</summary>
    public string Cause { get; } = cause;

    /// <summary>What happened, for people: a clause without a full stop.</summary>
    public string Label { get; } = label;

    /// <summary>Share of ordinary groups in which it happens, 0 to 1.</summary>
    public double Rate { get; } = rate;

    /// <summary>What it does.</summary>
    public FaultEffect Effect { get; } = effect;

    /// <summary>How the group avoids it, or null.</summary>
    public string? Caution { get; } = caution;

    /// <summary>How far its rate and size can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;

    /// <summary>The same fault at another rate.</summary>
    internal FaultDefinition With(double other, Provenance otherProvenance) => new(Cause, Label, other, Effect, Caution, otherProvenance, At);
}
