using Calx.Measurement.Expressions;

namespace Calx.Practicals.Definition;

/// <summary>A column that teachers keep instead of readings: a tared mass, or one already subtracted.</summary>
public sealed class ColumnDefinition(
    string id, string label, string unit, ColumnKind kind, Expression stands, IReadOnlyList<string> aliases, FilePosition at)
{
    /// <summary>Its id, unique among readings and columns.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>How it came about.</summary>
    public ColumnKind Kind { get; } = kind;

    /// <summary>The readings that it stands for: a sum or difference of reading ids.</summary>
    public Expression Stands { get; } = stands;

    /// <summary>Other headings by which teachers know it.</summary>
    public IReadOnlyList<string> Aliases { get; } = aliases;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
