using Calx.App.Live;
using Calx.App.Pages.Answers;
using Calx.App.Pages.CatchUp;
using Calx.App.Pages.Keeping;
using Calx.App.Pages.Practicals;
using Calx.App.Serving;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Lessons;

/// <summary>Lessons before and after they run.</summary>
public static class LessonsRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder lessons = routes.MapGroup("/lessons").WithMetadata(Admits.Teacher);
        lessons.MapGet("", async (string? done, HttpContext context, LessonList list) =>
            Show.Page<LessonsPage>(new LessonsModel(await list.All(context.RequestAborted), done)));
        lessons.MapGet("/new", NewLesson.Ask);
        lessons.MapPost("", NewLesson.Make);
        MapOne(lessons);
        MapPapers(lessons);
    }

    private static void MapOne(RouteGroupBuilder lessons)
    {
        lessons.MapGet("/{id}", (string id, string? done, string? fault, HttpContext context, LessonDesk desk) =>
            In(id, context, desk, async room => Show.Page<LessonPage>(await desk.Model(room, new PageSaid(done, fault), context.RequestAborted))));
        lessons.MapPost("/{id}/settings", (string id, HttpContext context, LessonDesk desk, RecordStore store, LessonRooms rooms) =>
            In(id, context, desk, room => LessonChanges.Settings(room, context, store, rooms)));
        lessons.MapPost("/{id}/sign", (string id, HttpContext context, LessonDesk desk, RecordStore store, TimeProvider clock) =>
            In(id, context, desk, room => LessonChanges.Sign(room, context, store, clock)));
        lessons.MapPost("/{id}/members/{number:int}", (string id, int number, HttpContext context, LessonDesk desk, TimeProvider clock) =>
            In(id, context, desk, room => LessonChanges.Member(room, number, context, desk, clock)));
        lessons.MapPost("/{id}/groups", (string id, HttpContext context, LessonDesk desk, TimeProvider clock) =>
            In(id, context, desk, room => LessonChanges.Groups(room, context, desk, clock)));
        lessons.MapPost("/{id}/cover", (string id, HttpContext context, LessonDesk desk, TimeProvider clock) =>
            In(id, context, desk, room => CoverTurn.Into(room, context, clock)));
        lessons.MapPost("/{id}/cover/back", (string id, HttpContext context, LessonDesk desk, TimeProvider clock) =>
            In(id, context, desk, room => CoverTurn.Out(room, context, clock)));
        lessons.MapPost("/{id}/door", (string id, HttpContext context, LessonDesk desk, RecordStore store) =>
            In(id, context, desk, room => Door.Open(room, context, store)));
        lessons.MapGet("/{id}/door", (string id, HttpContext context, LessonDesk desk, RecordStore store, ServeOptions options, SafetyGate gate) =>
            In(id, context, desk, room => Door.Show(room, context, store, options, gate)));
        lessons.MapPost("/{id}/door/close", (string id, HttpContext context, LessonDesk desk, RecordStore store) =>
            In(id, context, desk, room => Door.Close(room, context, store)));
        lessons.MapPost("/{id}/end", (string id, HttpContext context, LessonDesk desk, Doors doors, TimeProvider clock) =>
            In(id, context, desk, room => LessonChanges.End(room, context, doors, clock)));
        lessons.MapPost("/{id}/answering", (string id, HttpContext context, LessonDesk desk, RecordStore store, TimeProvider clock) =>
            In(id, context, desk, room => AnsweringTurn.Take(room, context, store, clock)));
        lessons.MapGet("/{id}/delete", (string id, string? fault, HttpContext context, LessonDesk desk, Exports exports) =>
            In(id, context, desk, async room =>
            {
                LessonView view = await room.Now(context.RequestAborted);
                return Show.Page<DeletePage>(new DeleteModel(
                    room.Lesson, await desk.Class(room, context.RequestAborted), room.Practical.Title, view.Number, exports.Folder, fault));
            }));
        lessons.MapPost("/{id}/delete", (string id, HttpContext context, LessonDesk desk, RecordStore store, Exports exports) =>
            In(id, context, desk, room => LessonChanges.Delete(room, context, desk, store, exports)));
    }

    private static void MapPapers(RouteGroupBuilder lessons)
    {
        lessons.MapGet("/{id}/slips", (string id, HttpContext context, LessonDesk desk, ServeOptions options) =>
            In(id, context, desk, room => LessonPapers.Slips(room, context, desk, options)));
        lessons.MapGet("/{id}/plan", (string id, HttpContext context, LessonDesk desk, PlanDesk plans, ServeOptions options) =>
            In(id, context, desk, room => LessonPapers.Plan(room, context, desk, plans, options)));
        lessons.MapGet("/{id}/papers", (string id, HttpContext context, LessonDesk desk, PlanDesk plans, ServeOptions options, TimeProvider clock) =>
            In(id, context, desk, room => LessonPapers.List(room, context, desk, plans, options, clock)));
        lessons.MapPost("/{id}/catch-up", (string id, HttpContext context, LessonDesk desk, TimeProvider clock) =>
            In(id, context, desk, room => CatchUpDesk.Make(room, context, desk, clock)));
        lessons.MapGet("/{id}/papers/{name}", (string id, string name, HttpContext context, LessonDesk desk, PlanDesk plans, ServeOptions options, TimeProvider clock) =>
            In(id, context, desk, room => LessonPapers.File(room, name, context, desk, plans, options, clock)));
        lessons.MapGet("/{id}/findings", (string id, string? all, HttpContext context, LessonDesk desk) =>
            In(id, context, desk, async room => Show.Page<FindingsPage>(await desk.Findings(room, causes: all is "yes", context.RequestAborted))));
        lessons.MapGet("/{id}/report", (string id, HttpContext context, LessonDesk desk, ServeOptions options) =>
            In(id, context, desk, room => LessonPapers.Report(room, context, desk, options)));
        lessons.MapGet("/{id}/export", (string id, HttpContext context, LessonDesk desk, Exports exports) =>
            In(id, context, desk, async room => await exports.Download(
                room.Lesson, LessonPapers.FileName(await desk.Class(room, context.RequestAborted), room.Lesson), context.RequestAborted)));
    }

    private static async Task<IResult> In(string id, HttpContext context, LessonDesk desk, Func<LessonRoom, Task<IResult>> answer) =>
        await desk.Room(id, context.RequestAborted) is LessonRoom room ? await answer(room) : Show.Nothing("lesson");
}
