using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Students;

/// <summary>Takes a reading from a page without script. Where its decimals are not those of the balance it asks first.</summary>
public static class ReadingTyping
{
    /// <summary>Keeps it, or asks.</summary>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, Seat seat, TableDesk desk)
    {
        FormFields form = await FormFields.Of(context);
        LessonView view = await room.Now(context.RequestAborted);
        EntryWriter writer = EntryWriter.Of(seat);
        EntryReading read = FormEntry.Read(form, view, writer, ServerTime.Of(context));
        int chosen = seat.Role == SeatRole.Station && int.TryParse(form["group"], CultureInfo.InvariantCulture, out int group) ? group : 0;
        TableModel page = await TableRoutes.Model(context, desk, room, seat, chosen);
        if (read.Entry is not JournalEntry entry)
        {
            await read.KeepWish(room, context.RequestAborted);
            return Show.Page<TablePage>(page with { Fault = read.Fault }, StatusCodes.Status400BadRequest);
        }

        TypedReading? question = page.IsAssessed || view.Find(entry.Id) is not null ? null
            : (form.IsTicked("sure") ? null : Question(page, entry))
                ?? (form.IsTicked("cool") ? null : Warm(page, entry, form.IsTicked("sure"), ServerTime.Of(context)));
        if (question is not null)
        {
            return Show.Page<TablePage>(page with { Typed = question with { Replaces = entry.Replaces?.ToString(), Reason = entry.Reason } });
        }

        AppendResult result = await room.Append(entry, context.RequestAborted);
        if (result is AppendResult.Refused refused)
        {
            return Show.Page<TablePage>(page with { Fault = refused.Reason }, StatusCodes.Status409Conflict);
        }

        bool mayAsk = result is AppendResult.Added && !form.IsTicked("sure") && LookAgain.MayAsk(room, entry);
        return Show.See(mayAsk && await AskedReading.Of(context, room, seat, entry.Id) is not null ? $"/table?asked={entry.Id}" : "/table");
    }

    /// <summary>The question about what was heated and is weighed while its countdown runs; null for any other reading.</summary>
    private static TypedReading? Warm(TableModel page, JournalEntry entry, bool isSure, DateTimeOffset now)
    {
        GroupTable? table = page.Tables.FirstOrDefault(t => t.Number == entry.Cell.Group);
        bool cools = table?.Places.FirstOrDefault(p => p.Kind == PlaceKind.Read) is { CoolingMinutes: not null } next && next.Reading?.Id == entry.Cell.What;
        return entry is { Content: EntryContent.Reading reading, Replaces: null } && cools && table!.CoolAt > now
            ? new TypedReading(
                entry.Cell.Group,
                entry.Cell.What,
                reading.Written.ToString(),
                "The countdown still runs: it may still be hot. Tongs and mat every time; nobody tests by touch.",
                reading.Written.ToString(),
                reading.Balance ?? "",
                reading.Vessel ?? "") { Sure = isSure, IsHot = true }
            : null;
    }

    /// <summary>What is asked about a reading, or null where its decimals are those of its balance or no balance shows it.</summary>
    private static TypedReading? Question(TableModel page, JournalEntry entry)
    {
        if (entry.Content is not EntryContent.Reading { Balance: string letter } reading
            || DecimalsCheck.DecimalsOf(page.View, page.Balances, entry.Cell.What, letter) is not int decimals
            || reading.Written.Decimals == decimals)
        {
            return null;
        }

        string shows = $"Your balance shows {DecimalsInWords.Of(decimals)}";
        bool hasTooFew = reading.Written.Decimals < decimals;
        string offered = DecimalsCheck.Whole(reading.Written, decimals).ToString();
        return new TypedReading(
            entry.Cell.Group,
            entry.Cell.What,
            reading.Written.ToString(),
            hasTooFew ? $"{shows}: {offered}?" : $"{shows}. Look again and type all you see.",
            offered,
            reading.Balance ?? "",
            reading.Vessel ?? "") { Sure = true };
    }
}
