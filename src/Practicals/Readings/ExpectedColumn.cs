namespace Calx.Practicals.Readings;

/// <summary>A column of numbers that a class's table for a practical may have.</summary>
public sealed class ExpectedColumn
{
    /// <summary>Takes an expected column.</summary>
    /// <param name="id">Id of the practical's reading or column.</param>
    /// <param name="label">Its label, without unit.</param>
    /// <param name="kind">What its numbers are.</param>
    /// <param name="aliases">Other headings that mean it.</param>
    /// <param name="unit">Its unit; g for a mass.</param>
    /// <param name="repeats">How often it may be taken, from 1.</param>
    /// <param name="repeatLabel">Label of the second weighing on, or null.</param>
    /// <param name="limits">What its numbers can be; null where nothing is known.</param>
    public ExpectedColumn(
        string id,
        string label,
        ExpectedKind kind,
        IReadOnlyList<string>? aliases = null,
        string unit = "g",
        int repeats = 1,
        string? repeatLabel = null,
        ExpectedLimits? limits = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentOutOfRangeException.ThrowIfLessThan(repeats, 1);
        Id = id;
        Label = label;
        Kind = kind;
        Aliases = aliases ?? [];
        Unit = unit;
        Repeats = repeats;
        RepeatLabel = repeatLabel;
        Limits = limits ?? ExpectedLimits.None;
    }

    /// <summary>Id of the practical's reading or column.</summary>
    public string Id { get; }

    /// <summary>Its label, without unit.</summary>
    public string Label { get; }

    /// <summary>What its numbers are.</summary>
    public ExpectedKind Kind { get; }

    /// <summary>Other headings that mean it.</summary>
    public IReadOnlyList<string> Aliases { get; }

    /// <summary>Its unit; g for a mass.</summary>
    public string Unit { get; }

    /// <summary>How often it may be taken, from 1.</summary>
    public int Repeats { get; }

    /// <summary>Label of the second weighing on, or null.</summary>
    public string? RepeatLabel { get; }

    /// <summary>What its numbers can be.</summary>
    public ExpectedLimits Limits { get; }

    /// <summary>Whether it is one of the practical's readings, not a ready-made mass.</summary>
    public bool IsReading => Kind is ExpectedKind.Weighing or ExpectedKind.Gauge;
}
