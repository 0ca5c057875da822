using Calx.App.Live;
using Calx.App.Pages.Students;
using Calx.App.Serving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Answers;

/// <summary>The pages on which students answer on their own devices, during the lesson or after it.</summary>
public static class AnswersRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder answers = routes.MapGroup("/answers").WithMetadata(Admits.Joined);
        answers.MapGet("", (string? q, int? who, string? fault, HttpContext context, LessonRooms rooms, SafetyGate safety, AnswersDesk desk) =>
            In(context, rooms, safety, (room, seat) => who is > 0 ? Word(context, room, seat, desk, who.Value) : Page(context, room, seat, desk, q, fault)));
        answers.MapPost("/who", (HttpContext context, LessonRooms rooms, SafetyGate safety, AnswersDesk desk, Cookies cookies, GuessLimit guesses) =>
            In(context, rooms, safety, (room, seat) => WhoAnswers.Take(context, room, seat, desk, new WhoAnswers.Doors(cookies, guesses))));
        answers.MapPost("/next", (HttpContext context, LessonRooms rooms, SafetyGate safety, Cookies cookies) =>
            In(context, rooms, safety, (_, seat) =>
            {
                cookies.Give(context, seat with { Member = 0 });
                return Task.FromResult(Show.See("/answers"));
            }));
        answers.MapPost("/write", (HttpContext context, LessonRooms rooms, SafetyGate safety, AnswersDesk desk) =>
            In(context, rooms, safety, (room, seat) => AnswerWriting.Take(context, room, seat, desk)));
        answers.MapPost("/entries", (HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            In(context, rooms, safety, (room, seat) => EntryIntake.Take(context, room, EntryWriter.Of(seat))));
        answers.MapGet("/stream", (long? after, HttpContext context, LessonRooms rooms) => Seated.In(context, rooms, (room, seat) =>
            Task.FromResult(LiveEvents.Of(room, after ?? -1, context, seat.Group))));
    }

    private static async Task<IResult> Page(HttpContext context, LessonRoom room, Seat seat, AnswersDesk desk, string? chosen, string? fault)
    {
        LessonView view = await room.Now(context.RequestAborted);
        if (await desk.Page(view, seat, context.RequestAborted) is not AnswersModel model)
        {
            return await WhoAnswers.Page(context, view, seat, desk, fault);
        }

        bool isKnown = chosen == AnswersModel.All || model.Asked.Any(a => a.Question.Id == chosen);
        return Show.Page<AnswersPage>(model with { Fault = fault, Current = isKnown ? chosen! : model.Current });
    }

    /// <summary>The word of a student is asked for.</summary>
    private static async Task<IResult> Word(HttpContext context, LessonRoom room, Seat seat, AnswersDesk desk, int member)
    {
        LessonView view = await room.Now(context.RequestAborted);
        return (await desk.Roll(view, context.RequestAborted)).MayChoose(seat, member)
            ? await WhoAnswers.Page(context, view, seat, desk, null, member) : Show.See("/answers");
    }

    /// <summary>A balance station takes readings and no answers.</summary>
    private static Task<IResult> In(
        HttpContext context, LessonRooms rooms, SafetyGate safety, Func<LessonRoom, Seat, Task<IResult>> answer) =>
        TableRoutes.Opened(context, rooms, safety, (room, seat) => seat.Role == SeatRole.Station ? Task.FromResult(Show.See("/table")) : answer(room, seat));
}
