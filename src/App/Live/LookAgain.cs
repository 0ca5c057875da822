using System.Globalization;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Watching;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>What a student is asked about a reading that was just kept. It is kept in any case, and asked about once.</summary>
public static class LookAgain
{
    /// <summary>Whether a reading may be asked about at all: not in an assessed lesson, not after looking again, and no faster than
    /// people type.</summary>
    public static bool MayAsk(LessonRoom room, JournalEntry entry) =>
        !room.Lesson.Settings.Assessed && entry.Replaces is null && entry.Content is EntryContent.Reading && room.Asking.Take(entry.Cell.Group);

    /// <summary>The question in words that give nothing away, or null for none.</summary>
    /// <param name="view">The lesson with the reading.</param>
    /// <param name="entry">The reading.</param>
    /// <param name="balances">The school's balances.</param>
    public static string? Ask(LessonView view, JournalEntry entry, LetteredBalances balances)
    {
        if (entry.Content is not EntryContent.Reading reading || entry.Cell.Trial != view.State.Group(entry.Cell.Group).Trial)
        {
            return null;
        }

        (ReadingDefinition definition, int occurrence, _) = view.Weighings.FirstOrDefault(w => w.Id == entry.Cell.What);
        return definition is null ? null : view.Room.Watch.QueryFor(
            AtWork.Of(view, balances, entry.Cell.Group, reading.Balance),
            new Weighing(definition.Id, occurrence),
            reading.Written,
            UInt128.Parse(entry.Id.ToString(), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)).ForStudent;
    }
}
