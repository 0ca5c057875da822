namespace Calx.Practicals.Definition;

/// <summary>Where the numbers or facts of an entry come from.</summary>
public sealed class Provenance(Standing standing, string? source)
{
    /// <summary>How far they can be trusted.</summary>
    public Standing Standing { get; } = standing;

    /// <summary>The source in words, or null; there is one wherever the standing is literature.</summary>
    public string? Source { get; } = source;
}
