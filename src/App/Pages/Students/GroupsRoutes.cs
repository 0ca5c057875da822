using System.Globalization;
using System.Security.Cryptography;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Pages.Students;

/// <summary>Where a device that has joined takes a group.</summary>
public static class GroupsRoutes
{
    private const int IdBytes = 16;
    private const string Closed = "Your teacher has not opened this practical yet.";
    private const string Over = "This lesson is over: nobody takes a group any more. Your teacher can go on with it.";

    public static void Map(IEndpointRouteBuilder routes)
    {
        RouteGroupBuilder groups = routes.MapGroup("/groups").WithMetadata(Admits.Joined);
        groups.MapGet("", (HttpContext context, LessonRooms rooms, SafetyGate safety) =>
            Choosing(context, rooms, (room, seat) => Page(context, room, seat, safety, null)));
        groups.MapPost("", (HttpContext context, LessonRooms rooms, SafetyGate safety, Cookies cookies) =>
            Choosing(context, rooms, (room, seat) => Take(context, room, seat, safety, cookies)));
        groups.MapGet("/stream", (HttpContext context, LessonRooms rooms) =>
            Seated.In(context, rooms, (room, _) => Task.FromResult(LiveEvents.Of(room, -1, context))));
    }

    /// <summary>A station types for every group and takes none.</summary>
    private static Task<IResult> Choosing(HttpContext context, LessonRooms rooms, Func<LessonRoom, Seat, Task<IResult>> answer) =>
        Seated.In(context, rooms, (room, seat) =>
            seat.Role == SeatRole.Station ? Task.FromResult(Show.See("/table")) : answer(room, seat));

    private static async Task<IResult> Page(HttpContext context, LessonRoom room, Seat seat, SafetyGate safety, string? fault)
    {
        LessonView view = await room.Now(context.RequestAborted);
        if (view.State.IsOver && seat.Role == SeatRole.Joined && fault is null)
        {
            // No group weighs any more: what is left to do is to answer.
            return Show.See("/answers");
        }

        bool isOpen = await safety.IsOpen(room, context.RequestAborted);
        bool isBound = seat.Role == SeatRole.Group && view.State.Group(seat.Group).Binds(seat.Device);
        return Show.Page<GroupsPage>(
            new GroupsModel(view, seat.Role == SeatRole.Group ? seat.Group : 0, isOpen, isBound, fault),
            fault is null ? StatusCodes.Status200OK : StatusCodes.Status409Conflict);
    }

    private static async Task<IResult> Take(HttpContext context, LessonRoom room, Seat seat, SafetyGate safety, Cookies cookies)
    {
        FormFields form = await FormFields.Of(context);
        if (!await safety.IsOpen(room, context.RequestAborted))
        {
            return await Page(context, room, seat, safety, Closed);
        }

        LessonView view = await room.Now(context.RequestAborted);
        if (view.State.IsOver)
        {
            return await Page(context, room, seat, safety, Over);
        }

        if (!int.TryParse(form["group"], CultureInfo.InvariantCulture, out int group) || group < 1 || group > view.GroupCount)
        {
            return await Page(context, room, seat, safety, $"The groups of this lesson are 1 to {view.GroupCount}.");
        }

        // Readings will come: the engine is made ready beside this, so that the first of them does not wait for it.
        _ = room.Ready;
        if (seat.Role == SeatRole.Group && seat.Group != group && view.State.Group(seat.Group).Binds(seat.Device))
        {
            string stays = $"This device has typed readings for group {seat.Group}, so it stays there. Your teacher can free it.";
            return await Page(context, room, seat, safety, stays);
        }

        if (seat.Role == SeatRole.Group && seat.Group != group)
        {
            await Tell(context, room, seat, seat.Group, Acts.DeviceOut);
        }

        if (seat.Role != SeatRole.Group || seat.Group != group)
        {
            await Tell(context, room, seat, group, Acts.DeviceIn);
            cookies.Give(context, seat with { Role = SeatRole.Group, Group = group, Member = 0 });
        }

        return Show.See("/table");
    }

    private static async Task Tell(HttpContext context, LessonRoom room, Seat seat, int group, string what)
    {
        CancellationToken cancellation = context.RequestAborted;
        var id = EntryId.Of(BitConverter.ToUInt128(RandomNumberGenerator.GetBytes(IdBytes)));
        int trial = (await room.Now(cancellation)).State.Group(group).Trial;
        var cell = new JournalCell(group, trial, what);
        await room.Append(new JournalEntry(id, cell, new EntryContent.Happening(""), seat.Device, ServerTime.Of(context)), cancellation);
    }
}
