using Calx.App.Live;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Live;

/// <summary>Takes the teacher's word on which entry of a cell counts.</summary>
public static class CellChoice
{
    /// <summary>Keeps it and shows the cell again.</summary>
    /// <param name="context">The request: the entry that counts, and why.</param>
    /// <param name="room">The lesson.</param>
    /// <param name="cell">The cell.</param>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, JournalCell cell)
    {
        FormFields form = await FormFields.Of(context);
        LessonView view = await room.Now(context.RequestAborted);
        string reason = form.Short("reason", JournalEntry.LongestText);
        string address = FormattableString.Invariant($"/lessons/{room.Lesson.Id}/groups/{cell.Group}/cells/{cell.Trial}/{Uri.EscapeDataString(cell.What)}");
        string? fault = reason.Length == 0 ? "Say why this one counts."
            : !EntryId.TryParse(form["entry"], out EntryId id) || view.Find(id) is not KeptEntry counts || counts.Entry.Cell != cell
                || counts.Entry.Content is not EntryContent.Reading ? "That reading is not in this place of the table."
            : await Keep(room, view, counts, reason, ServerTime.Of(context), context.RequestAborted);
        return Show.See(fault is null ? address : $"{address}?fault={Uri.EscapeDataString(fault)}");
    }

    private static async Task<string?> Keep(
        LessonRoom room, LessonView view, KeptEntry counts, string reason, DateTimeOffset at, CancellationToken cancellation)
    {
        CellState cell = view.Table.First(c => c.Cell == counts.Entry.Cell);
        JournalEntry[] entries = [.. CellDecision.For(view, counts, reason, at)];
        if (!cell.Standing.Contains(counts))
        {
            // What was struck through does not rise again: the teacher's entry says the same number anew.
            var again = new JournalEntry(
                CellDecision.AgainId(counts, cell), counts.Entry.Cell, counts.Entry.Content, EntryWriter.Teacher.Device, at, cell.Current.Entry.Id, reason);
            entries = [.. CellDecision.With(view, again, EntryWriter.Teacher), again];
        }

        return entries.Length > 0 && await room.Append(entries, cancellation) is AppendResult.Refused refused ? refused.Reason : null;
    }
}
