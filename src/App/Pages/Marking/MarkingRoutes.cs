using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.App.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Marking;

/// <summary>The marking of a lesson's answers: the teacher's alone.</summary>
public static class MarkingRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder marking = routes.MapGroup("/lessons/{id}/marking").WithMetadata(Admits.Teacher);
        marking.MapGet("", (string id, string? names, string? done, string? fault, HttpContext context, MarkingDesk desk) => desk.In(
            id, context, async room => Show.Page<ClassMarksPage>(new ClassMarksModel(await desk.Model(room, new PageSaid(done, fault), context.RequestAborted), names is "yes"))));
        marking.MapGet("/look", (string id, HttpContext context, MarkingDesk desk) => desk.In(
            id, context, async room => Show.Page<LookPage>(await desk.Model(room, new PageSaid(null, null), context.RequestAborted))));
        marking.MapPost("/feedback", (string id, HttpContext context, MarkingDesk desk) => desk.In(id, context, room => desk.OpenFeedback(room, context)));
        marking.MapGet("/files/{name}", (string id, string name, HttpContext context, MarkingDesk desk) => desk.In(id, context, room => desk.File(room, name, context)));
        marking.MapGet("/settings", (string id, string? done, HttpContext context, MarkingDesk desk) => desk.In(id, context, async room =>
        {
            MarkingModel model = await desk.Model(room, new PageSaid(done, null), context.RequestAborted);
            return Show.Page<MarkingSettingsPage>(new SettingsModel(model, model.Marks.Settings));
        }));
        marking.MapPost("/settings", (string id, HttpContext context, MarkingDesk desk) => desk.In(id, context, room => desk.KeepSettings(room, context)));
        MapStudents(marking);
        MapWords(marking);
    }

    private static void MapStudents(RouteGroupBuilder marking)
    {
        marking.MapGet("/students", (string id, HttpContext context, MarkingDesk desk) => desk.In(
            id, context, async room => Show.Page<StudentsMarksPage>(await desk.Model(room, new PageSaid(null, null), context.RequestAborted))));
        marking.MapGet("/students/{number:int}", (string id, int number, string? done, string? fault, HttpContext context, MarkingDesk desk) => desk.In(
            id, context, async room => StudentMarksModel.Of(await desk.Model(room, new PageSaid(done, fault), context.RequestAborted), number) is StudentMarksModel one
                ? Show.Page<StudentMarksPage>(one) : Show.Nothing("student with answers in this lesson")));
        marking.MapPost("/students/{number:int}/{answer}", (string id, int number, string answer, HttpContext context, MarkingDesk desk) =>
            desk.In(id, context, room => desk.Decide(room, number, answer, takesBack: false, context)));
        marking.MapPost("/students/{number:int}/{answer}/back", (string id, int number, string answer, HttpContext context, MarkingDesk desk) =>
            desk.In(id, context, room => desk.Decide(room, number, answer, takesBack: true, context)));
    }

    private static void MapWords(RouteGroupBuilder marking)
    {
        marking.MapGet("/words", (string id, string? at, string? after, string? only, string? fault, HttpContext context, WordDesk desk) =>
            desk.In(id, context, async room => Show.Page<WordsPage>(await desk.Model(room, new WordPlace(at, after, only), null, fault, context.RequestAborted))));
        marking.MapPost("/words", (string id, HttpContext context, WordDesk desk) => desk.In(id, context, room => desk.Give(room, context)));
        marking.MapGet("/comments", (string id, string? done, HttpContext context, WordDesk desk) => desk.In(id, context, room => desk.Comments(room, done, context)));
        marking.MapPost("/comments", (string id, HttpContext context, WordDesk desk) => desk.In(id, context, room => desk.KeepComments(room, context)));
    }
}
