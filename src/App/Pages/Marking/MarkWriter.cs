using System.Globalization;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Pages.Marking;

/// <summary>Writes the teacher's own marks into a lesson's journal. What was decided before stays there, struck through.</summary>
/// <param name="room">The lesson.</param>
/// <param name="clock">The time.</param>
public sealed class MarkWriter(LessonRoom room, TimeProvider clock)
{
    /// <summary>Longest reason of an overruling: that of a correction in the journal.</summary>
    public const int LongestReason = JournalEntry.LongestText;

    /// <summary>Longest comment on an answer in words.</summary>
    public const int LongestComment = 1000;

    /// <summary>Why the marks of an answer in words are given another time: nobody is asked for it.</summary>
    private const string Again = "marked again";

    /// <summary>Marks an answer by hand.</summary>
    /// <param name="work">Whose.</param>
    /// <param name="answer">Id of what was asked.</param>
    /// <param name="of">Marks that there are.</param>
    /// <param name="isWords">Whether it is an answer in words, where a comment may be left out.</param>
    /// <param name="wish">What the teacher sent.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <returns>What is wrong, or null.</returns>
    public async Task<string?> Give(LessonWork work, string answer, int of, bool isWords, MarkWish wish, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(wish);
        LessonView view = await room.Now(cancellation);
        CellState? cell = work.DecisionOn(answer)?.Cell;
        if (Fault(view, work, answer, cell, wish, isWords ? LongestComment : LongestReason) is string fault)
        {
            return fault;
        }

        if (wish.MarksOf(of) is not int marks)
        {
            return string.Create(CultureInfo.InvariantCulture, $"'{Short(wish.Marks)}' is no mark here: a whole number from 0 to {of} is expected.");
        }

        if (!isWords && wish.Words.Length == 0)
        {
            return "Say why: the reason is kept with the marks.";
        }

        EntryId? replaced = wish.Replaced;
        var entry = new JournalEntry(
            wish.EntryId!.Value, CellOf(work, answer), new EntryContent.Mark(marks, of, wish.Words.Length > 0 ? wish.Words : null), EntryWriter.Teacher.Device,
            clock.GetUtcNow(), replaced, replaced is null ? null : isWords ? Again : wish.Words);
        return await Keep([.. Rivals(cell, entry.Id, replaced, isWords ? Again : wish.Words), entry], cancellation);
    }

    /// <summary>Takes the teacher's marks back: those worked out count again, and an answer in words waits again.</summary>
    public async Task<string?> TakeBack(LessonWork work, string answer, MarkWish wish, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(wish);
        LessonView view = await room.Now(cancellation);
        CellState? cell = work.DecisionOn(answer)?.Cell;
        if (Fault(view, work, answer, cell, wish, LongestReason) is string fault)
        {
            return fault;
        }

        if (wish.Words.Length == 0)
        {
            return "Say why: the reason is kept.";
        }

        if (wish.Replaced is not EntryId replaced || view.Find(replaced) is not KeptEntry old || old.Entry.Cell != CellOf(work, answer))
        {
            return "There are no marks of yours to be taken back.";
        }

        return await Keep(
            [.. Rivals(cell, wish.EntryId!.Value, replaced, wish.Words), JournalEntry.SettingAside(wish.EntryId!.Value, old.Entry, EntryWriter.Teacher.Device, clock.GetUtcNow(), wish.Words)],
            cancellation);
    }

    private static JournalCell CellOf(LessonWork work, string answer) => new(0, 1, Acts.MarkPrefix + answer, work.Member.Number);

    private static string? Fault(LessonView view, LessonWork work, string answer, CellState? cell, MarkWish wish, int longest)
    {
        if (wish.EntryId is not EntryId id)
        {
            return "What was sent does not come from a form of this page. Open the page again.";
        }

        if (wish.Words.Length > longest)
        {
            return string.Create(CultureInfo.InvariantCulture, $"The text has {wish.Words.Length} characters: at most {longest} are kept.");
        }

        // A form that is sent twice is known by its id; whether it says the same is seen where it is kept.
        return view.Find(id) is not null ? null
            : wish.Seen != (work.AnswerTo(answer)?.Entry.Id.ToString() ?? "") ? "The answer has changed since this page was opened. Here it is as it is now."
            : wish.Was != (Standing(cell)?.Entry.Id.ToString() ?? "") ? "Marks were given from another page meanwhile. Here they are."
            : null;
    }

    /// <summary>The mark that counts in a cell, or null.</summary>
    public static KeptEntry? Standing(CellState? cell) => cell?.Decisive.FirstOrDefault();

    /// <summary>Marks that stand beside the one replaced, as from two programs at one moment, are set aside with it.</summary>
    private IEnumerable<JournalEntry> Rivals(CellState? cell, EntryId decision, EntryId? replaced, string reason) =>
        (cell?.Decisive ?? []).Where(k => k.Entry.Id != replaced && k.Entry.Id != decision)
        .Select(k => JournalEntry.SettingAside(CellDecision.IdOf(decision, k.Entry.Id), k.Entry, EntryWriter.Teacher.Device, clock.GetUtcNow(), reason));

    private async Task<string?> Keep(JournalEntry[] entries, CancellationToken cancellation) =>
        await room.Append(entries, cancellation) is AppendResult.Refused ? "This page was sent before with other marks, and those are kept. Open it again to change them." : null;

    private static string Short(string text) => text.Length <= 20 ? text : $"{text[..20]}...";
}
