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

        if (!form.IsTicked("sure") && !page.IsAssessed && Question(page, entry) is TypedReading question)
        {
            return Show.Page<TablePage>(page with { Typed = question });
        }

        return await room.Append(entry, context.RequestAborted) is AppendResult.Refused refused
            ? Show.Page<TablePage>(page with { Fault = refused.Reason }, StatusCodes.Status409Conflict)
            : Show.See("/table");
    }

    /// <summary>What is asked about a reading, or null where its decimals are those of its balance or no balance shows it.</summary>
    private static TypedReading? Question(TableModel page, JournalEntry entry)
    {
        if (entry.Content is not EntryContent.Reading reading || !IsWeighing(page.View, entry.Cell.What)
            || page.Balances.FirstOrDefault(b => b.Letter == reading.Balance) is not BalanceChoice balance
            || reading.Written.Decimals == balance.Decimals)
        {
            return null;
        }

        string shows = $"Your balance shows {DecimalsInWords.Of(balance.Decimals)}";
        bool hasTooFew = reading.Written.Decimals < balance.Decimals;
        // Adding a zero with the display's decimals writes the zeros that the display shows.
        var zero = new decimal(0, 0, 0, isNegative: false, (byte)balance.Decimals);
        string offered = (hasTooFew ? new WrittenNumber(reading.Written.Value + zero) : reading.Written).ToString();
        return new TypedReading(
            entry.Cell.Group,
            entry.Cell.What,
            reading.Written.ToString(),
            hasTooFew ? $"{shows}: {offered}?" : $"{shows}. Look again and type all you see.",
            offered,
            reading.Balance ?? "",
            reading.Vessel ?? "");
    }

    private static bool IsWeighing(LessonView view, string id) =>
        view.Weighings.Any(w => TakenReading.IdOf(w.Reading.Id, w.Occurrence) == id && w.Reading is ReadingDefinition { Gauge: null });
}
