using Calx.Practicals.Definition;

namespace Calx.Practicals.Checking;

/// <summary>What a check of a practical's file found.</summary>
public sealed class CheckedPractical
{
    internal CheckedPractical(Practical? practical, IReadOnlyList<CheckFinding> findings, IReadOnlyList<IdealValue> ideals, bool isWhole)
    {
        Practical = practical;
        Findings = [.. findings.Distinct().OrderBy(f => f.Line).ThenBy(f => f.Column).ThenBy(f => f.Kind)];
        Ideals = ideals;
        IsWhole = isWhole;
    }

    /// <summary>The practical, or null where the file cannot be used.</summary>
    public Practical? Practical { get; }

    /// <summary>Everything found, in the order of the file.</summary>
    public IReadOnlyList<CheckFinding> Findings { get; }

    /// <summary>The theory values that the file implies, in its order; empty where faults keep them from being worked out.</summary>
    public IReadOnlyList<IdealValue> Ideals { get; }

    /// <summary>Whether every check could be made. Where faults stand in the sections that the others rest on, some wait for them.</summary>
    public bool IsWhole { get; }

    /// <summary>Whether nothing was found.</summary>
    public bool IsInOrder => Findings.Count == 0;
}
