using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A value asked of the readings.</summary>
public sealed class QuantityDefinition(string id, string label, string unit, Expression formula, FilePosition at)
{
    /// <summary>Its id, unique among the quantities.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its unit; <c>1</c> for a ratio.</summary>
    public string Unit { get; } = unit;

    /// <summary>The unit as it stands behind a number in a sentence: <c> g</c>, <c> %</c>, nothing for a ratio.</summary>
    public string UnitBehind => Unit == "1" ? string.Empty : " " + Unit;

    /// <summary>How it follows from readings (a repeated reading stands for its last time) and molar masses.</summary>
    public Expression Formula { get; } = formula;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
