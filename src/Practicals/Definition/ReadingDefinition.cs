namespace Calx.Practicals.Definition;

/// <summary>A number that every group takes from an instrument and writes down.</summary>
public sealed class ReadingDefinition(
    string id,
    string label,
    string unit,
    Instrument instrument,
    Pan pan,
    string? gauge,
    InstrumentErrors? errors,
    int repeats,
    string? repeatLabel,
    IReadOnlyList<string> aliases,
    FilePosition at)
{
    /// <summary>Its id, unique among readings and columns; formulas use it.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people; with its unit the heading on the sheet.</summary>
    public string Label { get; } = label;

    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>What it is taken with.</summary>
    public Instrument Instrument { get; } = instrument;

    /// <summary>What stands on the pan; empty where the instrument is no balance.</summary>
    public Pan Pan { get; } = pan;

    /// <summary>Id of the gauge that is read, or null for a weighing.</summary>
    public string? Gauge { get; } = gauge;

    /// <summary>How far the instrument may be off; null for a weighing, where the lesson's balances say it.</summary>
    public InstrumentErrors? Errors { get; } = errors;

    /// <summary>Whether it is taken on a balance.</summary>
    public bool IsWeighing => Gauge is null;

    /// <summary>Most times it is taken, from 1.</summary>
    public int Repeats { get; } = repeats;

    /// <summary>Label of the second time on, or null where it has none of its own.</summary>
    public string? RepeatLabel { get; } = repeatLabel;

    /// <summary>Other headings by which teachers know it.</summary>
    public IReadOnlyList<string> Aliases { get; } = aliases;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;
}
