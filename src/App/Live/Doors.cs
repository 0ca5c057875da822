using Calx.App.Serving;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>The doors of lessons, by which new devices come in. A lesson that is over has none, however it came to its end.</summary>
public sealed class Doors(RecordStore store, LessonRooms rooms)
{
    /// <summary>The open door of a code, a station's too; null where no lesson that goes on has it.</summary>
    public async Task<LessonDoor?> Find(string code, CancellationToken cancellation) =>
        await store.FindDoor(code, cancellation) is LessonDoor door
        && await rooms.Find(door.LessonId, cancellation) is LessonRoom room
        && !(await room.Now(cancellation)).State.IsOver ? door : null;

    /// <summary>Closes a lesson's door where the teacher has ended it: taken up again, it opens with new codes.</summary>
    public async Task CloseAtTheEnd(LessonRoom room, CancellationToken cancellation)
    {
        if ((await room.Now(cancellation)).State.IsOver && await store.DoorOf(room.Lesson.Id, cancellation) is { IsOpen: true })
        {
            await store.CloseDoor(room.Lesson.Id, Visitor.TeachersDevice, cancellation);
        }
    }
}
