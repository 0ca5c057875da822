using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Pages.Students;

/// <summary>A reading that was kept and is asked about once, on the page that follows where there is no script.</summary>
/// <param name="Kept">The reading.</param>
/// <param name="Question">What is asked: the words of the script's question.</param>
public sealed record AskedReading(KeptEntry Kept, string Question)
{
    /// <summary>The question about a reading of the device's group; null where nothing is asked, or it was answered.</summary>
    public static async Task<AskedReading?> Of(HttpContext context, LessonRoom room, Seat seat, EntryId id)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(seat);
        LessonView view = await room.Now(context.RequestAborted);
        if (room.Lesson.Settings.Assessed || view.Find(id) is not KeptEntry { Entry.Content: EntryContent.Reading } kept
            || (seat.Role != SeatRole.Station && kept.Entry.Cell.Group != seat.Group)
            || view.Table.First(c => c.Cell == kept.Entry.Cell).ReplacerOf(kept) is not null || WasLookedAt(view, kept))
        {
            return null;
        }

        await room.Ready.WaitAsync(context.RequestAborted);
        KnownBalances balances = context.RequestServices.GetRequiredService<KnownBalances>();
        return LookAgain.Ask(view, kept.Entry, await balances.Now(context.RequestAborted)) is string question ? new AskedReading(kept, question) : null;
    }

    private static bool WasLookedAt(LessonView view, KeptEntry kept) => view.Entries.Any(e =>
        e.Number > kept.Number && e.Entry.Cell.Group == kept.Entry.Cell.Group && e.Entry.Cell.What == Acts.LookedAgain
        && e.Entry.Content is EntryContent.Happening happening && happening.Text == kept.Entry.Cell.What);
}
