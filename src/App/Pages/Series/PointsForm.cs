using System.Text.Json;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Series;

/// <summary>Takes points of mass against time: one after another while a group reads, or all of them from a paper slip.</summary>
public static class PointsForm
{
    /// <summary>Keeps what is new. A point that is kept already is changed by the teacher alone, with a reason.</summary>
    /// <returns>What was not taken, or null.</returns>
    public static async Task<string?> Take(HttpContext context, LessonRoom room, EntryWriter writer, PointsModel page)
    {
        FormFields form = await FormFields.Of(context);
        var reader = new EntryReader(page.View, writer, ServerTime.Of(context));
        var faults = new List<string>();
        foreach (TypedPoint point in page.Points)
        {
            string typed = form[point.Id];
            if (typed.Length == 0 || typed == point.Written)
            {
                continue;
            }

            string? fault = await Keep(context, room, writer, reader, page, point, typed, form["reason"]);
            faults.AddRange(fault is null ? [] : [$"{point.Time} {page.Series.TimeUnit}: {fault}"]);
        }

        return faults.Count == 0 ? null : string.Join(" ", faults.Take(5));
    }

    private static async Task<string?> Keep(
        HttpContext context, LessonRoom room, EntryWriter writer, EntryReader reader, PointsModel page, TypedPoint point, string typed, string reason)
    {
        if (point.Kept is not null && !writer.IsTeacher)
        {
            return $"{point.Written} is kept already; ask your teacher to change it.";
        }

        var fields = new Dictionary<string, object>(StringComparer.Ordinal)
        {
            ["id"] = NewEntryId.Draw().ToString(), ["kind"] = "reading", ["group"] = page.Group, ["trial"] = page.Trial, ["what"] = point.Id, ["written"] = typed,
        };
        if (page.View.Reading(page.Group, page.Series.From)?.Entry.Content is EntryContent.Reading { Balance: string letter })
        {
            fields["balance"] = letter;
        }

        if (point.Kept is not null)
        {
            fields["replaces"] = point.Kept.Entry.Id.ToString();
            fields["reason"] = reason;
        }

        EntryReading read = reader.Read(JsonSerializer.SerializeToElement(fields));
        return read.Entry is not JournalEntry entry ? read.Fault
            : (await room.Append([.. CellDecision.With(page.View, entry, writer), entry], context.RequestAborted) as AppendResult.Refused)?.Reason;
    }
}
