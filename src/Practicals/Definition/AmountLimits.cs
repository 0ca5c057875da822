namespace Calx.Practicals.Definition;

/// <summary>The most that a class may use, and how many groups may do it; no plan passes it.</summary>
public sealed class AmountLimits(double largestSample, string unit, int? groups, string? note, Provenance provenance, FilePosition at)
{
    /// <summary>Largest sample of a group, in <see cref="Unit"/>; above 0.</summary>
    public double LargestSample { get; } = largestSample;

    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>Most groups that may do it side by side, or null where a whole class may.</summary>
    public int? Groups { get; } = groups;

    /// <summary>Whether it is a demonstration: done once, by the teacher.</summary>
    public bool IsDemonstration => Groups == 1;

    /// <summary>What else holds, such as the form of the sample; or null.</summary>
    public string? Note { get; } = note;

    /// <summary>How far the limit can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Its source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
