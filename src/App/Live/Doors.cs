using Calx.App.Pages.Students;
using Calx.App.Serving;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>The doors of lessons, by which new devices come in. A lesson that is over has none, however it came to its end, but one that
/// the teacher opens after it: by that one devices come in to answer and to read, and for no group.</summary>
public sealed class Doors(RecordStore store, LessonRooms rooms)
{
    /// <summary>The open door of a code, a station's too; null where no lesson that goes on has it.</summary>
    public async Task<LessonDoor?> Find(string code, CancellationToken cancellation) =>
        await store.FindDoor(code, cancellation) is LessonDoor door
        && await rooms.Find(door.LessonId, cancellation) is LessonRoom room
        && (await room.Now(cancellation)).State is LessonState state
        && (!state.IsOver || (IsForAnswers(door, state) && code == JoinCode.Of(door.Code))) ? door : null;

    /// <summary>Whether an open door was opened after its lesson.</summary>
    public static bool IsForAnswers(LessonDoor? door, LessonState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return door is { IsOpen: true } && door.OpenedAt > state.EndedAt;
    }

    /// <summary>Closes a lesson's door where the teacher has ended it: taken up again, it opens with new codes.</summary>
    public async Task CloseAtTheEnd(LessonRoom room, CancellationToken cancellation)
    {
        LessonState state = (await room.Now(cancellation)).State;
        if (state.IsOver && await store.DoorOf(room.Lesson.Id, cancellation) is { IsOpen: true } door && !IsForAnswers(door, state))
        {
            await store.CloseDoor(room.Lesson.Id, Visitor.TeachersDevice, cancellation);
        }
    }
}
