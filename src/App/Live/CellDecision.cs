using System.Security.Cryptography;
using System.Text;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// The teacher's word on a cell of the table: one entry counts from then on, and every other that stands there is set aside with
/// the reason. Nothing is taken out.
/// </summary>
public static class CellDecision
{
    private const int IdLength = 32;

    /// <summary>What goes into the journal with an entry of the teacher's: a correction sets aside all that it does not itself replace.
    /// Empty for everything that is no correction of a reading, and where there is nothing else.</summary>
    /// <param name="view">The lesson before it.</param>
    /// <param name="entry">The entry.</param>
    /// <param name="writer">Who writes it.</param>
    public static IReadOnlyList<JournalEntry> With(LessonView view, JournalEntry entry, EntryWriter writer) =>
        writer.IsTeacher && entry is { Content: EntryContent.Reading, Replaces: EntryId replaced, Reason: string reason }
            ? Around(view, entry.Cell, [replaced, entry.Id], entry.Id, reason, entry.TypedAt) : [];

    /// <summary>That one entry of a cell counts: all others that stand are set aside.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="counts">The entry that counts; one that stands.</param>
    /// <param name="reason">Why.</param>
    /// <param name="at">When it was decided.</param>
    public static IReadOnlyList<JournalEntry> For(LessonView view, KeptEntry counts, string reason, DateTimeOffset at) =>
        Around(view, counts.Entry.Cell, [counts.Entry.Id], counts.Entry.Id, reason, at);

    /// <summary>The id of an entry by which a reading that was struck through is said again; another one each time the cell has grown.</summary>
    public static EntryId AgainId(KeptEntry counts, CellState cell)
    {
        ArgumentNullException.ThrowIfNull(counts);
        ArgumentNullException.ThrowIfNull(cell);
        return IdOf(counts.Entry.Id, cell.History[^1].Entry.Id);
    }

    private static JournalEntry[] Around(
        LessonView view, JournalCell cell, EntryId[] but, EntryId decision, string reason, DateTimeOffset at) =>
    [
        .. (view.Table.FirstOrDefault(c => c.Cell == cell)?.Decisive ?? []).Where(k => !but.Contains(k.Entry.Id))
            .Select(k => JournalEntry.SettingAside(IdOf(decision, k.Entry.Id), k.Entry, EntryWriter.Teacher.Device, at, reason)),
    ];

    /// <summary>The same decision on the same entry has the same id, so that one that is sent twice is one.</summary>
    internal static EntryId IdOf(EntryId decision, EntryId other)
    {
        byte[] hash = SHA256.HashData(Encoding.ASCII.GetBytes($"{decision} sets aside {other}"));
        return EntryId.TryParse(Convert.ToHexStringLower(hash)[..IdLength], out EntryId id) ? id : throw new InvalidOperationException("The hash was 0.");
    }
}
