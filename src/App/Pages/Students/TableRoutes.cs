using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Students;

/// <summary>The pages of a group's device and of a balance station.</summary>
public static class TableRoutes
{
    private const string Closed = "Your teacher has not opened this practical yet.";

    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder table = routes.MapGroup("/table").WithMetadata(Admits.AtTheTable);
        table.MapGet("", (int? group, string? fault, string? asked, HttpContext context, LessonRooms rooms, SafetyGate safety, TableDesk desk) =>
            Opened(context, rooms, safety, async (room, seat) => Show.Page<TablePage>(
                await Model(context, desk, room, seat, group ?? 0) with
                {
                    Fault = fault, Asked = EntryId.TryParse(asked, out EntryId id) ? await AskedReading.Of(context, room, seat, id) : null,
                })));
        table.MapGet("/stream", (long? after, HttpContext context, LessonRooms rooms) => Seated.In(context, rooms, (room, seat) =>
            Task.FromResult(LiveEvents.Of(room, after ?? -1, context, seat.Role == SeatRole.Station ? null : seat.Group))));
        table.MapPost("/entries", (HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            Opened(context, rooms, safety, (room, seat) => EntryIntake.Take(context, room, EntryWriter.Of(seat))));
        table.MapPost("/write", (HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            Opened(context, rooms, safety, (room, seat) => FormEntry.Take(context, room, EntryWriter.Of(seat))));
        table.MapPost("/correction", (HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            Opened(context, rooms, safety, (room, seat) => CorrectionAsking.Take(context, room, seat)));
        table.MapPost("/type", (HttpContext context, LessonRooms rooms, SafetyGate safety, TableDesk desk) =>
            Opened(context, rooms, safety, (room, seat) => ReadingTyping.Take(context, room, seat, desk)));
        routes.MapPost("/table/leave", (HttpContext context) =>
        {
            Cookies.Leave(context);
            return Show.See("/join");
        }).WithMetadata(Admits.Joined);
    }

    /// <summary>What a device shows; only a station chooses a group by the address.</summary>
    public static async Task<TableModel> Model(HttpContext context, TableDesk desk, LessonRoom room, Seat seat, int chosen)
    {
        TableModel model = await desk.Of(await room.Now(context.RequestAborted), seat, context.RequestAborted);
        return seat.Role == SeatRole.Station && model.Tables.Any(t => t.Number == chosen) ? model with { Chosen = chosen } : model;
    }

    /// <summary>Answers once the teacher has opened the practical; before that a page waits, and entries are turned away.</summary>
    internal static Task<IResult> Opened(
        HttpContext context, LessonRooms rooms, SafetyGate safety, Func<LessonRoom, Seat, Task<IResult>> answer) =>
        Seated.In(context, rooms, async (room, seat) => await safety.IsOpen(room, context.RequestAborted)
            ? await answer(room, seat)
            : Refusals.WantsPage(context.Request) ? Show.Page<WaitPage>(Closed, StatusCodes.Status403Forbidden)
            : TypedResults.Json(new { title = "Not opened", sentence = Closed }, statusCode: StatusCodes.Status403Forbidden));
}
