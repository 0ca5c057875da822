using System.Text.Json;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Series;

/// <summary>Takes a group's points of mass against time from a page without script.</summary>
public static class PointsForm
{
    /// <summary>Keeps what is new. A point that is kept already is changed by the teacher alone, with a reason.</summary>
    /// <returns>What was not taken, or null.</returns>
    public static async Task<string?> Take(HttpContext context, LessonRoom room, PointsModel page)
    {
        FormFields form = await FormFields.Of(context);
        var reader = new EntryReader(page.View, EntryWriter.Of(page.Seat), ServerTime.Of(context));
        var faults = new List<string>();
        foreach (TypedPoint point in page.Points)
        {
            string typed = form[point.Id];
            // Sent once more after a lost answer, with a comma or a point, it is the same.
            if (typed.Length == 0 || typed.Trim().Replace(',', '.') == point.Written)
            {
                continue;
            }

            string? fault = point.Reading is not null ? $"{point.Written} is kept already; ask your teacher to change it."
                : await Keep(context, room, reader, page, point.Id, typed);
            faults.AddRange(fault is null ? [] : [$"{point.Time} {page.Series.TimeUnit}: {fault}"]);
        }

        return faults.Count == 0 ? null : string.Join(" ", faults.Take(5));
    }

    private static async Task<string?> Keep(HttpContext context, LessonRoom room, EntryReader reader, PointsModel page, string id, string typed)
    {
        var fields = new Dictionary<string, object>(StringComparer.Ordinal)
        {
            ["id"] = NewEntryId.Draw().ToString(), ["kind"] = "reading", ["group"] = page.Group, ["trial"] = page.Trial, ["what"] = id, ["written"] = typed,
        };
        if (page.Balance is string letter)
        {
            fields["balance"] = letter;
        }

        EntryReading read = reader.Read(JsonSerializer.SerializeToElement(fields));
        return read.Entry is JournalEntry entry ? (await room.Append(entry, context.RequestAborted) as AppendResult.Refused)?.Reason : read.Fault;
    }
}
