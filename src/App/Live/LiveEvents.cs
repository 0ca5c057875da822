using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Live;

/// <summary>
/// Tells a page when the lesson has moved on: a server-sent event with the journal's number. The page then fetches its parts
/// anew, so that one that missed some events has missed nothing.
/// </summary>
public static class LiveEvents
{
    /// <summary>Nothing stays silent for longer, so that a page finds out about a dead connection, and minutes pass on it.</summary>
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(15);

    /// <summary>Entries that come close together are told at once.</summary>
    private static readonly TimeSpan Gathering = TimeSpan.FromMilliseconds(120);

    /// <summary>The stream.</summary>
    /// <param name="room">The lesson.</param>
    /// <param name="after">The number that the page shows.</param>
    /// <param name="context">The request; a browser that comes back names the last number that it heard.</param>
    /// <param name="group">The group whose page it is, which hears of nothing but itself and the whole lesson; null hears all.</param>
    public static IResult Of(LessonRoom room, long after, HttpContext context, int? group = null) => TypedResults.ServerSentEvents(
        Events(room, long.TryParse(context.Request.Headers["Last-Event-ID"], out long last) ? last : after, group, context.RequestAborted));

    private static async IAsyncEnumerable<SseItem<string>> Events(
        LessonRoom room, long after, int? group, [EnumeratorCancellation] CancellationToken cancellation)
    {
        int told = room.Told;
        while (!cancellation.IsCancellationRequested && !room.IsClosed)
        {
            Task change = room.Change();
            LessonView view = await room.Now(cancellation);
            long number = group is int own ? view.NumberFor(own) : view.Number;
            // What a group's page shows does not come late.
            bool isTold = group is null && told != room.Told;
            if (number != after || isTold)
            {
                (after, told) = (number, room.Told);
                yield return Item("changed", number);
            }

            if (await IsWithin(change, Beat, cancellation))
            {
                await Task.Delay(Gathering, cancellation);
            }
            else
            {
                yield return Item("beat", after);
            }
        }
    }

    /// <summary>Whether it ends in time. Its timer ends with it: a busy lesson would else leave thousands of them running.</summary>
    private static async Task<bool> IsWithin(Task change, TimeSpan time, CancellationToken cancellation)
    {
        await change.WaitAsync(time, cancellation).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        cancellation.ThrowIfCancellationRequested();
        return change.IsCompleted;
    }

    private static SseItem<string> Item(string kind, long number) =>
        new(number.ToString(System.Globalization.CultureInfo.InvariantCulture), kind)
        {
            EventId = number.ToString(System.Globalization.CultureInfo.InvariantCulture),
            ReconnectionInterval = TimeSpan.FromSeconds(2),
        };
}
