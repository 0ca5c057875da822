using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Live;

/// <summary>The teacher's pages while a lesson runs.</summary>
public static class LiveRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder lesson = routes.MapGroup("/lessons/{id}").WithMetadata(Admits.Teacher);
        lesson.MapGet("/live", (string id, HttpContext context, LessonRooms rooms, LivePages pages) =>
            In(id, rooms, context, async (view, cancellation) => Show.Page<LivePage>(await pages.Board(view, cancellation))));
        lesson.MapGet("/groups/{group:int}", (string id, int group, string? fault, HttpContext context, LessonRooms rooms, LivePages pages) =>
            In(id, rooms, context, async (view, cancellation) => group >= 1 && group <= view.GroupCount
                ? Show.Page<GroupPage>(await pages.Group(view, group, fault, cancellation)) : Show.Nothing("group")));
        lesson.MapGet("/groups/{group:int}/cells/{trial:int}/{what}", (string id, int group, int trial, string what, string? fault, string? ask, string? typed, string? why, HttpContext context, LessonRooms rooms) =>
            In(id, rooms, context, (view, _) => Task.FromResult(CellModel.Of(view, group, trial, what, fault) is CellModel cell
                ? Show.Page<CellPage>(cell with { Ask = ask, Typed = typed, Why = why }) : Show.Nothing("cell"))));
        lesson.MapGet("/grid", (string id, string? fault, HttpContext context, LessonRooms rooms) =>
            In(id, rooms, context, async (view, _) => Show.Page<GridPage>(new GridModel(view, fault, await FormEntry.Balances(context, view.Room)))));
        lesson.MapGet("/projector", (string id, HttpContext context, LessonRooms rooms, LivePages pages) =>
            In(id, rooms, context, async (view, cancellation) => Show.Page<ProjectorPage>(await pages.Projector(view, cancellation))));
        lesson.MapGet("/stream", async (string id, long? after, HttpContext context, LessonRooms rooms) =>
            await Find(id, rooms, context) is LessonRoom room ? LiveEvents.Of(room, after ?? -1, context) : Results.NotFound());
        lesson.MapPost("/entries", async (string id, HttpContext context, LessonRooms rooms, Doors doors) =>
            await Find(id, rooms, context) is LessonRoom room
                ? await Kept(EntryIntake.Take(context, room, EntryWriter.Teacher), room, context, doors) : Results.NotFound());
        lesson.MapPost("/write", async (string id, HttpContext context, LessonRooms rooms, Doors doors) =>
            await Find(id, rooms, context) is LessonRoom room
                ? await Kept(FormEntry.Take(context, room, EntryWriter.Teacher), room, context, doors) : Show.Nothing("lesson"));
        lesson.MapPost("/groups/{group:int}/cells/{trial:int}/{what}/counts", async (string id, int group, int trial, string what, HttpContext context, LessonRooms rooms) =>
            await Find(id, rooms, context) is LessonRoom room ? await CellChoice.Take(context, room, new JournalCell(group, trial, what)) : Show.Nothing("lesson"));
        lesson.MapPost("/grid", async (string id, HttpContext context, LessonRooms rooms) =>
            await Find(id, rooms, context) is LessonRoom room ? await GridForm.Take(context, room) : Show.Nothing("lesson"));
    }

    /// <summary>What the teacher wrote may have ended the lesson; with it ends its door.</summary>
    private static async Task<IResult> Kept(Task<IResult> taken, LessonRoom room, HttpContext context, Doors doors)
    {
        IResult answer = await taken;
        await doors.CloseAtTheEnd(room, context.RequestAborted);
        return answer;
    }

    private static async Task<LessonRoom?> Find(string id, LessonRooms rooms, HttpContext context) =>
        RecordId.TryParse(id, out RecordId lesson) ? await rooms.Find(lesson, context.RequestAborted) : null;

    private static async Task<IResult> In(
        string id, LessonRooms rooms, HttpContext context, Func<LessonView, CancellationToken, Task<IResult>> show) =>
        await Find(id, rooms, context) is LessonRoom room
            ? await show(await room.Now(context.RequestAborted), context.RequestAborted)
            : Show.Nothing("lesson");
}
