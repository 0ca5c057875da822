namespace Calx.Records.Journal;

/// <summary>What a cell of the table holds, with everything that was ever typed there.</summary>
public sealed class CellState
{
    internal CellState(JournalCell cell, IReadOnlyList<KeptEntry> history, IReadOnlyList<KeptEntry> standing)
    {
        Cell = cell;
        History = history;
        Standing = standing;
    }

    /// <summary>Which cell.</summary>
    public JournalCell Cell { get; }

    /// <summary>All entries of the cell in the order of the journal, those replaced too.</summary>
    public IReadOnlyList<KeptEntry> History { get; }

    /// <summary>Entries that none replaces, in the order of the journal; never empty.</summary>
    public IReadOnlyList<KeptEntry> Standing { get; }

    /// <summary>The entry that counts: the first of those that stand, and a reading, observation, answer or mark before any note or
    /// happening. A second one typed for the same cell does not push it aside.</summary>
    public KeptEntry Current => Decisive.FirstOrDefault() ?? Standing[0];

    /// <summary>The last that stands: of happenings, what holds now.</summary>
    public KeptEntry Latest => Standing[^1];

    /// <summary>Whether several entries stand that cannot all count, so that somebody has to decide. Notes and happenings all count.</summary>
    public bool IsContested => Decisive.Skip(1).Any();

    private IEnumerable<KeptEntry> Decisive => Standing.Where(e => !e.Entry.Content.StandsBesideOthers);
}
