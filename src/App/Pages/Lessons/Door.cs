using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Lessons;

/// <summary>Opens a lesson to devices, shows how they come in, and closes it.</summary>
public static class Door
{
    public static async Task<IResult> Open(LessonRoom room, HttpContext context, RecordStore store)
    {
        LessonDoor? door = (await room.Now(context.RequestAborted)).State.IsOver
            ? null : await store.OpenDoor(room.Lesson.Id, Visitor.TeachersDevice, context.RequestAborted);
        return Pages.Show.See(door is null
            ? Changes.Saying($"/lessons/{room.Lesson.Id}", "fault", "This lesson is over. Take it up again before you open the door.")
            : $"/lessons/{room.Lesson.Id}/door");
    }

    public static async Task<IResult> Show(LessonRoom room, HttpContext context, RecordStore store, ServeOptions options, SafetyGate gate) =>
        await store.DoorOf(room.Lesson.Id, context.RequestAborted) is { IsOpen: true } door
            && (await room.Now(context.RequestAborted)).State is LessonState state && (!state.IsOver || Doors.IsForAnswers(door, state))
            ? Pages.Show.Page<DoorPage>(new DoorModel(
                await room.Now(context.RequestAborted), door, Addresses(context, options), await gate.IsOpen(room, context.RequestAborted)))
            : Pages.Show.See(Changes.Saying($"/lessons/{room.Lesson.Id}", "fault", "The door is closed."));

    public static async Task<IResult> Close(LessonRoom room, HttpContext context, RecordStore store)
    {
        await store.CloseDoor(room.Lesson.Id, Visitor.TeachersDevice, context.RequestAborted);
        return Pages.Show.See(Changes.Saying($"/lessons/{room.Lesson.Id}", "done", "The door is closed. Devices that have joined stay."));
    }

    /// <summary>Addresses of the page to join, by which the room's devices reach this program.</summary>
    public static IReadOnlyList<string> Addresses(HttpContext context, ServeOptions options) => options.OpenToRoom
        ? [.. RoomAddresses.OfRoom().Select(host => string.Create(
            CultureInfo.InvariantCulture, $"{context.Request.Scheme}://{host}:{context.Connection.LocalPort}/join"))]
        : [];
}
