namespace Calx.Records.Journal;

/// <summary>
/// The journal of one lesson: entries are only ever added, and the table of the lesson is a view of them. What a correction
/// replaces is no longer current and stays for all to see. Not for use from several threads at once.
/// </summary>
public sealed class LessonJournal
{
    internal const string IdTaken = "Another entry has this id already, and it stays as it is; send this one under an id of its own.";

    private readonly List<KeptEntry> entries = [];
    private readonly Dictionary<EntryId, KeptEntry> byId = [];
    private readonly Dictionary<JournalCell, List<KeptEntry>> byCell = [];
    private readonly HashSet<EntryId> replaced = [];

    /// <summary>All entries in the order in which they were received.</summary>
    public IReadOnlyList<KeptEntry> Entries => entries;

    /// <summary>Adds an entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="receivedAt">When it was received.</param>
    public AppendResult Append(JournalEntry entry, DateTimeOffset receivedAt)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (byId.TryGetValue(entry.Id, out KeptEntry? known))
        {
            return known.Entry == entry
                ? new AppendResult.Known(known)
                : new AppendResult.Refused(IdTaken);
        }

        var kept = new KeptEntry(entry, entries.Count + 1, receivedAt);
        entries.Add(kept);
        byId.Add(entry.Id, kept);
        if (!byCell.TryGetValue(entry.Cell, out List<KeptEntry>? cell))
        {
            byCell.Add(entry.Cell, cell = []);
        }

        cell.Add(kept);
        if (Corrects(entry))
        {
            replaced.Add(entry.Replaces!.Value);
        }

        return new AppendResult.Added(kept);
    }

    /// <summary>What a cell holds, or null where nothing was ever typed there.</summary>
    public CellState? Find(JournalCell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return byCell.TryGetValue(cell, out List<KeptEntry>? history)
            ? new CellState(cell, [.. history], [.. history.Where(e => !replaced.Contains(e.Entry.Id))])
            : null;
    }

    /// <summary>The table: every cell in which something was typed, by group, trial, member and what it is.</summary>
    public IReadOnlyList<CellState> Table =>
    [
        .. byCell.Keys.OrderBy(c => c.Group).ThenBy(c => c.Trial).ThenBy(c => c.Member).ThenBy(c => c.What, StringComparer.Ordinal).Select(c => Find(c)!),
    ];

    /// <summary>A correction replaces an entry of its own cell that was received before it. One of another cell, or of an entry that
    /// is not there, replaces nothing and stands beside what is there: nothing is lost by a wrong reference.</summary>
    private bool Corrects(JournalEntry entry) =>
        entry.Replaces is EntryId id && byId.TryGetValue(id, out KeptEntry? other) && other.Entry.Cell == entry.Cell;
}
