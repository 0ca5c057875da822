using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.App.Serving;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Home;

/// <summary>The first page.</summary>
public static class HomeRoutes
{
    /// <summary>Lessons in a list on it.</summary>
    private const int Most = 8;

    /// <summary>A lesson that was left running some days ago is still on; an older one was forgotten.</summary>
    private const int DaysBack = 3;

    public static void Map(IEndpointRouteBuilder routes) => routes.MapGet("/", Show).WithMetadata(Admits.Teacher);

    private static async Task<IResult> Show(HttpContext context, LessonList list, LessonRooms rooms, RecordStore store, ServeOptions options, TimeProvider clock)
    {
        DateOnly today = Dates.Today(clock);
        IReadOnlyList<LessonRow> all = await list.All(context.RequestAborted);
        var open = new List<OpenLesson>();
        var next = new List<LessonRow>();
        var last = new List<LessonRow>();
        foreach (LessonRow row in all)
        {
            LessonView? view = row.Lesson.Date >= today.AddDays(-DaysBack) ? await View(row, rooms, context.RequestAborted) : null;
            if (view is { State.IsOver: false } && await IsOn(view, store, context.RequestAborted))
            {
                open.Add(new OpenLesson(row, view.MinuteAt(clock.GetUtcNow()), view.BellMinute));
            }
            else if (row.Lesson.Date >= today && view is not { State.IsOver: true })
            {
                next.Add(row);
            }
            else if (last.Count < Most)
            {
                last.Add(row);
            }
        }

        return Pages.Show.Page<HomePage>(new HomeModel(
            today,
            open,
            [.. next.OrderBy(r => r.Lesson.Date).Take(Most)],
            last,
            all.Count > 0 || (await store.Classes(context.RequestAborted)).Count > 0,
            options is { OpenToRoom: false, Invented: false }));
    }

    private static async Task<bool> IsOn(LessonView view, RecordStore store, CancellationToken cancellation) =>
        view.State.BeganAt is not null || await store.DoorOf(view.Room.Lesson.Id, cancellation) is { IsOpen: true };

    /// <summary>Null where what was kept of the lesson cannot be read: its own page says why.</summary>
    private static async Task<LessonView?> View(LessonRow row, LessonRooms rooms, CancellationToken cancellation)
    {
        try
        {
            return await rooms.Find(row.Lesson.Id, cancellation) is LessonRoom room ? await room.Now(cancellation) : null;
        }
        catch (InvalidDataException)
        {
            return null;
        }
    }
}
