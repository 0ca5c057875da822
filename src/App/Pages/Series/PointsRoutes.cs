using Calx.App.Live;
using Calx.App.Pages.Live;
using Calx.App.Pages.Students;
using Calx.App.Serving;
using Calx.Records;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Series;

/// <summary>The pages on which mass against time is typed: a group's own, and the teacher's for all groups.</summary>
public static class PointsRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder table = routes.MapGroup("/table/points").WithMetadata(Admits.AtTheTable);
        table.MapGet("", (int? group, string? fault, HttpContext context, LessonRooms rooms, SafetyGate safety, KnownBalances school) =>
            TableRoutes.Opened(context, rooms, safety, async (room, seat) =>
                OfSeat(await room.Now(context.RequestAborted), seat, group ?? 0, fault) is PointsModel page
                    ? Show.Page<PointsPage>(page with { Displays = page.IsSimulated ? await Displays(page, school, context.RequestAborted) : page.Displays })
                    : Show.Nothing("series")));
        table.MapPost("", (int? group, HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            TableRoutes.Opened(context, rooms, safety, async (room, seat) =>
                OfSeat(await room.Now(context.RequestAborted), seat, group ?? 0, null) is PointsModel page ? await Taken(context, room, page) : Show.Nothing("series")));
        RouteGroupBuilder lesson = routes.MapGroup("/lessons/{id}").WithMetadata(Admits.Teacher);
        lesson.MapGet("/points", (string id, string? fault, HttpContext context, LessonRooms rooms) => Grid(id, null, fault, context, rooms));
        lesson.MapGet("/groups/{group:int}/points", (string id, int group, string? fault, HttpContext context, LessonRooms rooms) => Grid(id, group, fault, context, rooms));
        lesson.MapPost("/points", (string id, HttpContext context, LessonRooms rooms) => Typed(id, null, context, rooms));
        lesson.MapPost("/groups/{group:int}/points", (string id, int group, HttpContext context, LessonRooms rooms) => Typed(id, group, context, rooms));
    }

    private static async Task<IResult> Taken(HttpContext context, LessonRoom room, PointsModel page)
    {
        string? fault = await PointsForm.Take(context, room, page);
        char joins = page.Address.Contains('?', StringComparison.Ordinal) ? '&' : '?';
        return Show.See(fault is null ? page.Address : $"{page.Address}{joins}fault={Uri.EscapeDataString(fault)}");
    }

    /// <summary>A group's own device types for its group, a station at a balance for the one that is chosen.</summary>
    private static PointsModel? OfSeat(LessonView view, Seat seat, int chosen, string? fault)
    {
        int group = seat.Role == SeatRole.Station ? chosen : seat.Group;
        return view.Practical.Series is null || group < 1 || group > view.GroupCount ? null : new PointsModel(view, group, seat, fault);
    }

    private static async Task<IReadOnlyDictionary<string, string>> Displays(PointsModel page, KnownBalances school, CancellationToken cancellation) =>
        page.View.Room.Simulated.DisplaysOf(AtWork.Of(page.View, await school.Now(cancellation), page.Group));

    private static async Task<IResult> Grid(string id, int? group, string? fault, HttpContext context, LessonRooms rooms)
    {
        if (await Find(id, rooms, context) is not LessonRoom room)
        {
            return Show.Nothing("series");
        }

        LessonView view = await room.Now(context.RequestAborted);
        return view.Practical.Series is null || group < 1 || group > view.GroupCount
            ? Show.Nothing("series")
            : Show.Page<PointsGridPage>(new GridModel(view, fault, await FormEntry.Balances(context, room)) { Only = group });
    }

    private static async Task<IResult> Typed(string id, int? group, HttpContext context, LessonRooms rooms) =>
        await Find(id, rooms, context) is LessonRoom { Practical.Series: not null } room
            ? await GridForm.Take(context, room, context.Request.Path, grid => Show.Page<PointsGridPage>(grid with { Only = group }))
            : Show.Nothing("series");

    private static async Task<LessonRoom?> Find(string id, LessonRooms rooms, HttpContext context) =>
        RecordId.TryParse(id, out RecordId lesson) ? await rooms.Find(lesson, context.RequestAborted) : null;
}
