using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>What one group (in one trial) weighed, with what was said of it.</summary>
public sealed class GroupReadings
{
    /// <summary>Stands behind the name of a group whose readings are simulated, wherever they are written down.</summary>
    public const string SimulatedMark = "(simulated)";

    private readonly Dictionary<string, TakenReading> byId = new(StringComparer.Ordinal);

    /// <summary>Takes a group's readings, from a file or from a lesson that is going on.</summary>
    /// <param name="name">The group's name, not empty; any text.</param>
    /// <param name="trial">The trial as written, or null where the class has one trial a group.</param>
    /// <param name="readings">Readings in the order of the practical, repeats in the order in which they were taken.</param>
    /// <param name="derived">Ready-made masses (tared or subtracted) of the practical's columns.</param>
    /// <param name="remarks">Arm, time, balance, observations; null where nothing was said.</param>
    /// <param name="row">Row in the file, from 1; null for a lesson.</param>
    /// <param name="series">Mass against time; null where the practical takes none.</param>
    /// <exception cref="ArgumentException">The name is empty, or two readings have the same id.</exception>
    public GroupReadings(
        string name,
        string? trial,
        IReadOnlyList<TakenReading> readings,
        IReadOnlyList<TakenReading>? derived = null,
        GroupRemarks? remarks = null,
        int? row = null,
        GroupSeries? series = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(readings);
        Name = name;
        Trial = trial;
        Readings = readings;
        DerivedColumns = derived ?? [];
        Remarks = remarks ?? GroupRemarks.None;
        Row = row;
        Series = series;
        foreach (TakenReading reading in Readings.Concat(DerivedColumns))
        {
            if (!byId.TryAdd(reading.Id, reading))
                throw new ArgumentException($"{reading.Id} is there twice.", nameof(readings));
        }
    }

    /// <summary>The group's name as written, without spaces round it.</summary>
    public string Name { get; }

    /// <summary>Whether the name says that the readings are simulated.</summary>
    public bool IsSimulated => WithoutMark(Name).Length < Name.Length;

    /// <summary>The trial as written, or null.</summary>
    public string? Trial { get; }

    /// <summary>Readings in the order of the practical, repeats in order.</summary>
    public IReadOnlyList<TakenReading> Readings { get; }

    /// <summary>Ready-made masses of the practical's columns: tared readings and masses already subtracted.</summary>
    public IReadOnlyList<TakenReading> DerivedColumns { get; }

    /// <summary>Arm, time, balance and observations.</summary>
    public GroupRemarks Remarks { get; }

    /// <summary>Row in the file, from 1 (the first, where a group has several); null for a lesson.</summary>
    public int? Row { get; }

    /// <summary>Mass against time, or null where the practical takes none.</summary>
    public GroupSeries? Series { get; }

    /// <summary>The reading or ready-made mass with an id such as <c>after2</c>, or null where the group has none.</summary>
    public TakenReading? Find(string id) => byId.GetValueOrDefault(id);

    /// <summary>All weighings of one reading in order: <c>after</c>, <c>after2</c>, <c>after3</c>.</summary>
    public IEnumerable<TakenReading> RepeatsOf(string baseId) => Readings.Where(r => r.BaseId == baseId);

    /// <summary>The last weighing of a reading, or null where there is none.</summary>
    public TakenReading? LastOf(string baseId) => Readings.LastOrDefault(r => r.BaseId == baseId);

    /// <summary>A name without the mark of simulated readings; a name that is nothing else stays as it is.</summary>
    internal static string WithoutMark(string name)
    {
        bool marked = name.EndsWith(SimulatedMark, StringComparison.OrdinalIgnoreCase);
        string bare = marked ? name[..^SimulatedMark.Length].TrimEnd() : name;
        return bare.Length == 0 ? name : bare;
    }

    /// <summary>A name within a sentence, where a number alone would be taken for a quantity.</summary>
    /// <param name="name">The name, with or without a trial behind it.</param>
    /// <param name="language">The language; British where nothing else is said.</param>
    public static string InSentence(string name, EngineLanguage? language = null)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        return new Wording(language ?? EngineLanguage.British).Group(name);
    }
}
