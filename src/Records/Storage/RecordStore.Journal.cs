using Calx.Records.Journal;

namespace Calx.Records.Storage;

/// <summary>The journals of lessons.</summary>
public sealed partial class RecordStore
{
    /// <summary>Adds an entry to a lesson's journal. The answer comes when it is on the disk, together with others that came at the
    /// same time. Sending it again is safe: it is known by its id, which no other entry of the school has.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="cancel">Stops waiting; the entry may be kept all the same.</param>
    /// <returns>Added, known, or refused (another entry has its id; there is no such lesson).</returns>
    /// <exception cref="StoreUnavailableException">It is not kept as far as is known; later entries are tried anew.</exception>
    public Task<AppendResult> Append(RecordId lessonId, JournalEntry entry, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return entries.Append(lessonId, entry, cancel);
    }

    /// <summary>A lesson's entries in the order in which they were received. A reader that has all up to a number misses none by
    /// asking for those after it: numbers have no gaps, and none appears before those below it.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="after">The number after which to begin; 0 for all.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<KeptEntry>> Entries(RecordId lessonId, long after = 0, CancellationToken cancel = default) => await Read(
        $"SELECT {EntryRow.Selected} FROM entry WHERE school = @school AND lesson_id = @lesson AND number > @after ORDER BY number",
        EntryRow.Read,
        cancel,
        ("lesson", lessonId.ToString()),
        ("after", after));
}
