using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Answers;

/// <summary>Where a student says who answers on this device.</summary>
public static class WhoAnswers
{
    /// <summary>Longest word that is looked at.</summary>
    private const int LongestWord = 40;

    /// <summary>What a seat is given with, and what slows down guessing.</summary>
    /// <param name="Cookies">The seats.</param>
    /// <param name="Guesses">Wrong words are counted with wrong codes.</param>
    public sealed record Doors(Cookies Cookies, GuessLimit Guesses);

    /// <summary>The page on which one chooses.</summary>
    public static async Task<IResult> Page(HttpContext context, LessonView view, Seat seat, AnswersDesk desk, string? fault, int asked = 0)
    {
        ClassRoll roll = await desk.Roll(view, context.RequestAborted);
        return Show.Page<WhoPage>(
            new WhoModel(view, seat, roll.For(seat)) { Fault = fault, Asked = asked > 0 ? roll.Choice(seat, asked) : null },
            fault is null ? StatusCodes.Status200OK : StatusCodes.Status409Conflict);
    }

    /// <summary>Takes the choice; where another device answers for the student, with the student's word.</summary>
    public static async Task<IResult> Take(HttpContext context, LessonRoom room, Seat seat, AnswersDesk desk, Doors doors)
    {
        FormFields form = await FormFields.Of(context);
        LessonView view = await room.Now(context.RequestAborted);
        ClassRoll roll = await desk.Roll(view, context.RequestAborted);
        if (!int.TryParse(form["member"], NumberStyles.None, CultureInfo.InvariantCulture, out int member) || !roll.MayChoose(seat, member))
        {
            string who = seat.Role == SeatRole.Group ? $"is not in group {seat.Group}" : "does not answer in this lesson";
            return await Page(context, view, seat, desk, member > 0 ? $"Student {member} {who}. If that is wrong, tell your teacher." : "Choose who you are.");
        }

        AnswersFor devices = AnswersFor.Of(view, member);
        if (devices.Word is not null && !devices.Has(seat.Device) && WordFault(context, devices, form.Short("word", LongestWord), doors.Guesses) is string wrong)
        {
            return wrong.Length > 0 ? await Page(context, view, seat, desk, wrong, member)
                : Show.See(string.Create(CultureInfo.InvariantCulture, $"/answers?who={member}"));
        }

        if (!devices.Has(seat.Device) && await Claim(room, devices, roll, seat, member, ServerTime.Of(context), context.RequestAborted) is string fault)
        {
            return await Page(context, view, seat, desk, fault);
        }

        doors.Cookies.Give(context, seat with { Member = member });
        return Show.See("/answers");
    }

    /// <summary>What is wrong with a word; empty where none was given yet; null where it is right.</summary>
    private static string? WordFault(HttpContext context, AnswersFor devices, string typed, GuessLimit guesses)
    {
        string address = context.Connection.RemoteIpAddress?.ToString() ?? "";
        if (typed.Length == 0)
        {
            return "";
        }

        if (!guesses.MayTry(address))
        {
            return "Too many wrong words from here. Wait a minute and try again.";
        }

        if (devices.IsWord(typed))
        {
            return null;
        }

        guesses.Missed(address);
        return "That is not the word. It stands on the device on which you began; your teacher knows it too.";
    }

    /// <summary>The device answers for the student from now on. One who is in no group yet is in the device's group with that: the
    /// teacher sees it on the lesson's page and can change it.</summary>
    private static async Task<string?> Claim(
        LessonRoom room, AnswersFor devices, ClassRoll roll, Seat seat, int member, DateTimeOffset now, CancellationToken cancellation)
    {
        var entries = new List<JournalEntry>();
        if (seat.Role == SeatRole.Group && roll.GroupOf(member) == 0)
        {
            string group = seat.Group.ToString(CultureInfo.InvariantCulture);
            entries.Add(new JournalEntry(NewEntryId.Draw(), new JournalCell(0, 1, Acts.SeatOf, member), new EntryContent.Happening(group), seat.Device, now));
        }

        entries.Add(devices.Entry(seat.Device, now));
        return await room.Append(entries, cancellation) is AppendResult.Refused refused ? refused.Reason : null;
    }
}
