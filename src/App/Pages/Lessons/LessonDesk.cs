using Calx.App.Learning;
using Calx.App.Live;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Pages.Lessons;

/// <summary>Finds a lesson with what its pages show.</summary>
public sealed class LessonDesk(RecordStore store, KnownBalances school, LessonRooms rooms, SafetyGate gate)
{
    /// <summary>The room of a lesson by the id in an address, or null.</summary>
    public async Task<LessonRoom?> Room(string id, CancellationToken cancellation) =>
        RecordId.TryParse(id, out RecordId lesson) ? await rooms.Find(lesson, cancellation) : null;

    /// <summary>The lesson to prepare.</summary>
    public async Task<LessonModel> Model(LessonRoom room, PageSaid said, CancellationToken cancellation)
    {
        SchoolClass of = await Class(room, cancellation);
        return new LessonModel(
            await room.Now(cancellation),
            of,
            [.. (await store.Members(room.Lesson.ClassId, cancellation)).OrderBy(m => m.Number)],
            await store.DoorOf(room.Lesson.Id, cancellation),
            await gate.SignatureFor(room.Plan, cancellation),
            said)
        {
            Newer = await LessonNumbers.Newer(room, of, store, cancellation),
        };
    }

    /// <summary>The class of a lesson, which no record loses.</summary>
    public async Task<SchoolClass> Class(LessonRoom room, CancellationToken cancellation) =>
        await store.FindClass(room.Lesson.ClassId, cancellation)
        ?? throw new InvalidDataException($"The records hold lesson {room.Lesson.Id} and not its class.");

    /// <summary>What the readings show; null while there are none.</summary>
    public async Task<FindingsModel> Findings(LessonRoom room, bool causes, CancellationToken cancellation)
    {
        LessonView view = await room.Now(cancellation);
        LetteredBalances balances = await school.Now(cancellation);
        return new FindingsModel(
            view, await Class(room, cancellation), await Task.Run(() => LessonFindings.Of(view, balances, causes), cancellation), causes);
    }
}
