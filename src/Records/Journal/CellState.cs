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

    /// <summary>Whether several entries stand that cannot all count, so that somebody has to decide. Notes and happenings all count, and
    /// what says the same twice is no contradiction.</summary>
    public bool IsContested => Rivals.Any();

    /// <summary>Entries that stand beside the one that counts and say something else, in the order of the journal.</summary>
    public IEnumerable<KeptEntry> Rivals => Decisive.Skip(1).Where(e => !SaysTheSame(Current.Entry, e.Entry));

    /// <summary>Entries that stand and of which one can count, in the order of the journal.</summary>
    public IEnumerable<KeptEntry> Decisive => Standing.Where(e => !e.Entry.Content.StandsBesideOthers);

    /// <summary>Whether anything was replaced or set aside here.</summary>
    public bool IsCorrected => Standing.Count < History.Count;

    /// <summary>The entry that replaced one or set it aside, the first where several did; null where it stands.</summary>
    public KeptEntry? ReplacerOf(KeptEntry old)
    {
        ArgumentNullException.ThrowIfNull(old);
        return History.FirstOrDefault(k => k.Number > old.Number && k.Entry.Replaces == old.Entry.Id);
    }

    /// <summary>One device that sends a number twice says it once, though it may have named another balance or vessel the second time;
    /// two devices agree only where all that they typed is alike.</summary>
    private static bool SaysTheSame(JournalEntry one, JournalEntry other) =>
        one.Content == other.Content
        || (one.Device == other.Device && one.Content is EntryContent.Reading a && other.Content is EntryContent.Reading b
            && (a.Written, a.Unit) == (b.Written, b.Unit));
}
