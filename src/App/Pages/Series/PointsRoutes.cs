using System.Globalization;
using Calx.App.Live;
using Calx.App.Pages.Students;
using Calx.App.Serving;
using Calx.Records;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Series;

/// <summary>The pages on which mass against time is typed: a group's own, and the teacher's for a group.</summary>
public static class PointsRoutes
{
    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder table = routes.MapGroup("/table/points").WithMetadata(Admits.AtTheTable);
        table.MapGet("", (int? group, string? fault, HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            TableRoutes.Opened(context, rooms, safety, async (room, seat) =>
                OfSeat(await room.Now(context.RequestAborted), seat, group ?? 0, fault) is PointsModel page ? Show.Page<PointsPage>(page) : Show.Nothing("series")));
        table.MapPost("", (int? group, HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            TableRoutes.Opened(context, rooms, safety, async (room, seat) =>
                OfSeat(await room.Now(context.RequestAborted), seat, group ?? 0, null) is PointsModel page
                    ? await Taken(context, room, EntryWriter.Of(seat), page) : Show.Nothing("series")));
        RouteGroupBuilder lesson = routes.MapGroup("/lessons/{id}/groups/{group:int}/points").WithMetadata(Admits.Teacher);
        lesson.MapGet("", async (string id, int group, string? fault, HttpContext context, LessonRooms rooms) =>
            await Find(id, rooms, context) is LessonRoom room && OfTeacher(await room.Now(context.RequestAborted), group, fault) is PointsModel page
                ? Show.Page<PointsPage>(page) : Show.Nothing("series"));
        lesson.MapPost("", async (string id, int group, HttpContext context, LessonRooms rooms) =>
            await Find(id, rooms, context) is LessonRoom room && OfTeacher(await room.Now(context.RequestAborted), group, null) is PointsModel page
                ? await Taken(context, room, EntryWriter.Teacher, page) : Show.Nothing("series"));
    }

    private static async Task<IResult> Taken(HttpContext context, LessonRoom room, EntryWriter writer, PointsModel page)
    {
        string? fault = await PointsForm.Take(context, room, writer, page);
        char joins = page.Address.Contains('?', StringComparison.Ordinal) ? '&' : '?';
        return Show.See(fault is null ? page.Address : $"{page.Address}{joins}fault={Uri.EscapeDataString(fault)}");
    }

    /// <summary>A group's own device types for its group, a station at a balance for the one that is chosen.</summary>
    private static PointsModel? OfSeat(LessonView view, Seat seat, int chosen, string? fault)
    {
        bool isStation = seat.Role == SeatRole.Station;
        int group = isStation ? chosen : seat.Group;
        return view.Practical.Series is null || group < 1 || group > view.GroupCount ? null
            : new PointsModel(
                view,
                group,
                isStation ? string.Create(CultureInfo.InvariantCulture, $"/table/points?group={group}") : "/table/points",
                isStation ? string.Create(CultureInfo.InvariantCulture, $"/table?group={group}") : "/table",
                IsTeacher: false,
                fault);
    }

    private static PointsModel? OfTeacher(LessonView view, int group, string? fault) =>
        view.Practical.Series is null || group < 1 || group > view.GroupCount ? null
            : new PointsModel(
                view,
                group,
                string.Create(CultureInfo.InvariantCulture, $"/lessons/{view.Room.Lesson.Id}/groups/{group}/points"),
                $"/lessons/{view.Room.Lesson.Id}/grid",
                IsTeacher: true,
                fault);

    private static async Task<LessonRoom?> Find(string id, LessonRooms rooms, HttpContext context) =>
        RecordId.TryParse(id, out RecordId lesson) ? await rooms.Find(lesson, context.RequestAborted) : null;
}
