namespace Calx.Practicals.Definition;

/// <summary>What one more heating is worth.</summary>
public sealed class DecisionDefinition(double matters, double worthMinutes, Provenance provenance, FilePosition at)
{
    /// <summary>By how much the key quantity, in its own unit, must still move to spoil the answer; above 0.</summary>
    public double Matters { get; } = matters;

    /// <summary>Minutes of the lesson that a spoiled answer is worth; above 0.</summary>
    public double WorthMinutes { get; } = worthMinutes;

    /// <summary>How far these numbers can be trusted.</summary>
    public Standing Standing => provenance.Standing;

    /// <summary>Their source, or null.</summary>
    public string? Source => provenance.Source;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
