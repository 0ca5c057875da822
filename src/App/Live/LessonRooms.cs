using System.Collections.Concurrent;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>The lessons in memory, each opened when somebody first asks for it.</summary>
public sealed class LessonRooms : IDisposable
{
    /// <summary>More than a school has at one time; beyond that all are opened anew when next asked for.</summary>
    private const int Most = 500;

    private readonly ConcurrentDictionary<RecordId, LessonRoom> rooms = new();
    private readonly RecordStore store;
    private readonly IDisposable watch;

    public LessonRooms(RecordStore store)
    {
        this.store = store;
        watch = store.Watch(Tell);
    }

    /// <summary>The room of a lesson, or null where there is no such lesson.</summary>
    public async Task<LessonRoom?> Find(RecordId id, CancellationToken cancellation)
    {
        if (rooms.TryGetValue(id, out LessonRoom? open))
        {
            return open;
        }

        if (await store.FindLesson(id, cancellation) is not Lesson lesson)
        {
            return null;
        }

        if (rooms.Count >= Most)
        {
            rooms.Clear();
        }

        return rooms.GetOrAdd(id, LessonOpening.Open(lesson, store));
    }

    /// <summary>Has a lesson opened anew when next asked for: whoever changed it sees the change at once, and does not wait until the store tells of it.</summary>
    public void OpenAnew(RecordId id)
    {
        if (rooms.TryRemove(id, out LessonRoom? room))
        {
            room.Close();
        }
    }

    public void Dispose()
    {
        watch.Dispose();
        foreach (LessonRoom room in rooms.Values)
        {
            room.Dispose();
        }
    }

    /// <summary>A lesson that was changed or deleted is opened anew; one with new entries looks for them.</summary>
    private void Tell(RecordChange change)
    {
        LessonRoom[] told = change.Lesson is RecordId id ? rooms.TryGetValue(id, out LessonRoom? one) ? [one] : [] : [.. rooms.Values];
        foreach (LessonRoom room in told)
        {
            if (change.What is RecordChange.Lessons or RecordChange.Everything)
            {
                OpenAnew(room.Lesson.Id);
            }
            else
            {
                room.Stale();
            }
        }
    }
}
