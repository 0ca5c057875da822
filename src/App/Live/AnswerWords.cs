using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>An answer of the journal as a student writes it: the unit behind the number.</summary>
public static class AnswerWords
{
    /// <summary>The unit of a ratio, which nobody writes.</summary>
    private const string NoUnit = "1";

    /// <summary>Text and unit; the unit once, where it was written behind the number already.</summary>
    public static string Of(EntryContent.Answer answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        string text = answer.Text.Trim(), unit = answer.Unit?.Trim() ?? "";
        return unit is "" or NoUnit || text.EndsWith(unit, StringComparison.Ordinal) ? text : $"{text} {unit}";
    }

    /// <summary>What counts in a cell, or null where no answer does.</summary>
    public static string? Of(CellState? cell) => cell?.Current.Entry.Content is EntryContent.Answer answer ? Of(answer) : null;

    /// <summary>What counted in a cell before an entry of the journal was received, or null.</summary>
    /// <param name="cell">The cell, or null where nothing was ever answered.</param>
    /// <param name="number">The entry's place in the journal.</param>
    public static string? Before(CellState? cell, long number)
    {
        var then = new LessonJournal();
        foreach (KeptEntry kept in (cell?.History ?? []).Where(k => k.Number < number))
        {
            then.Append(kept.Entry, kept.ReceivedAt);
        }

        return cell is null ? null : Of(then.Find(cell.Cell));
    }
}
