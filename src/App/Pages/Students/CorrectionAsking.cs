using Calx.App.Live;
using Calx.App.Serving;
using Calx.Measurement.Numbers;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Students;

/// <summary>Takes a group's wish to have a reading put right, from a page without script. The sentence is the same as the script's.</summary>
public static class CorrectionAsking
{
    private const int Longest = 120;

    /// <summary>Keeps it and goes back.</summary>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, Seat seat)
    {
        FormFields form = await FormFields.Of(context);
        string should = form["should"];
        if (!EntryId.TryParse(form["id"], out EntryId id) || seat.Role != SeatRole.Group)
        {
            return Show.See("/table?fault=" + Uri.EscapeDataString("The form was broken; nothing was asked. Try again."));
        }

        if (!WrittenNumber.TryParse(should, out WrittenNumber number))
        {
            return Show.See("/table?fault=" + Uri.EscapeDataString("What it should be was not a number as a balance shows it, such as 24.31."));
        }

        LessonState lesson = (await room.Now(context.RequestAborted)).State;
        if (AfterTheEnd.Refusal(lesson, typedAt: null) is string late)
        {
            return Show.See("/table?fault=" + Uri.EscapeDataString(late));
        }

        GroupState state = lesson.Group(seat.Group);
        string sentence = $"{form.Short("label", Longest)}: {form.Short("was", Longest)} should be {number}; {form.Short("why", Longest)}.";
        var cell = new JournalCell(seat.Group, state.Trial, Acts.CorrectionAsked);
        AppendResult result = await room.Append(
            new JournalEntry(id, cell, new EntryContent.Happening(sentence), seat.Device, ServerTime.Of(context)), context.RequestAborted);
        return Show.See(result is AppendResult.Refused refused ? "/table?fault=" + Uri.EscapeDataString(refused.Reason) : "/table#sent");
    }
}
