namespace Calx.Practicals.Definition;

/// <summary>A quantity of the bench that is no mass and that events set and readings show: a time, a temperature.</summary>
public sealed class Gauge(string id, string label, string unit, FilePosition at)
{
    /// <summary>Its id, unique among the gauges.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
