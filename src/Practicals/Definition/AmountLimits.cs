namespace Calx.Practicals.Definition;

/// <summary>The most that a class may use; no plan passes it.</summary>
public sealed class AmountLimits(double largestSample, string unit, string? note, Provenance provenance, FilePosition at)
{
    /// <summary>Largest sample of a group, in <see cref="Unit"/>; above 0.</summary>
    public double LargestSample { get; } = largestSample;

    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>What else holds, such as the form of the sample; or null.</summary>
    public string? Note { get; } = note;

    /// <summary>How far the limit can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Its source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
