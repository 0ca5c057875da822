using Calx.App.Serving;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// A group's correction of a reading on which the teacher has decided: it does not overrule the teacher, and is not lost either. It
/// reaches the teacher as a correction that the group asks for.
/// </summary>
public static class CorrectionWish
{
    /// <summary>What the group is told.</summary>
    public const string PassedOn = "Your teacher has decided on this reading. What you typed was passed on, and your teacher looks at it.";

    /// <summary>Whether the teacher has typed, corrected or chosen in a cell.</summary>
    public static bool IsDecided(LessonView view, JournalCell cell)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.Table.FirstOrDefault(c => c.Cell == cell)?.History.Any(k =>
            k.Entry.Device == Visitor.TeachersDevice && (k.Entry.Replaces is not null || k.Entry.Content is EntryContent.Reading)) == true;
    }

    /// <summary>The wish, as a sentence of the group's page says it; null where it is about no reading.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="old">The reading that was to be corrected.</param>
    /// <param name="id">Id of the entry that was not taken.</param>
    /// <param name="content">What it said.</param>
    /// <param name="device">Who sent it.</param>
    /// <param name="typedAt">When it was typed.</param>
    /// <param name="reason">Why.</param>
    public static JournalEntry? Of(
        LessonView view, KeptEntry old, EntryId id, EntryContent content, string device, DateTimeOffset typedAt, string reason)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(old);
        if (content is not EntryContent.Reading should || old.Entry.Content is not EntryContent.Reading was)
        {
            return null;
        }

        JournalCell cell = old.Entry.Cell;
        string sentence = $"{CellNames.Of(view.Practical, cell.What)} / {was.Unit}: {was.Written} should be {should.Written}; {reason}.";
        return new JournalEntry(
            CellDecision.IdOf(id, old.Entry.Id), cell with { What = Acts.CorrectionAsked }, new EntryContent.Happening(sentence), device, typedAt);
    }
}
