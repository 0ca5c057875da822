using Calx.Measurement.Statistics.Series;

namespace Calx.Practicals.Definition;

/// <summary>A statement that the class is to come to.</summary>
public sealed class ConclusionDefinition(
    string id, string label, ConclusionTest? test, bool optional, FilePosition at, KineticOrder? order = null)
{
    /// <summary>Its id, unique among the conclusions.</summary>
    public string Id { get; } = id;

    /// <summary>The statement, without a full stop.</summary>
    public string Label { get; } = label;

    /// <summary>What it says of a quantity, or null where readings cannot decide it.</summary>
    public ConclusionTest? Test { get; } = test;

    /// <summary>The order that the curve is to show, and neither of the others; null where it says nothing of a curve.</summary>
    public KineticOrder? Order { get; } = order;

    /// <summary>Whether a plan looks at it only when asked to.</summary>
    public bool IsOptional { get; } = optional;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
