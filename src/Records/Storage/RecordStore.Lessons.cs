using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>Lessons.</summary>
public sealed partial class RecordStore
{
    private const string NoSuchLesson = "This lesson is not kept here, or no longer.";

    /// <summary>Adds a lesson with an empty journal. Refused where there is no such class, or the id is taken.</summary>
    /// <param name="added">The lesson.</param>
    /// <param name="by">Who adds it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> AddLesson(Lesson added, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(added);
        (string Name, object? Value)[] values = RecordRows.Of(added);
        return Change(
            by,
            "lesson-added",
            $"lesson {added.Id}",
            async (session, audit) =>
            {
                if (await ClassIn(session, added.ClassId, cancel) is null)
                {
                    return session.Refuse(NoSuchClass);
                }

                if (await LessonIn(session, added.Id, cancel) is not null)
                {
                    return session.Refuse("Another lesson has this id already.");
                }

                await session.Execute(RecordRows.Insert("lesson", values), cancel, values);
                await session.Execute("INSERT INTO journal (school, lesson_id, entries) VALUES (@school, @id, 0)", cancel, ("id", added.Id.ToString()));
                session.Tell(added.Id, RecordChange.Lessons);
                return audit.Added(RecordJson.Of(added));
            },
            cancel);
    }

    /// <summary>Changes the lesson of that id; what it was stays in the audit. Refused where there is no such lesson or class.</summary>
    /// <param name="changed">As it is to be.</param>
    /// <param name="by">Who changes it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> ChangeLesson(Lesson changed, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(changed);
        (string Name, object? Value)[] values = RecordRows.Of(changed);
        return Change(
            by,
            "lesson-changed",
            $"lesson {changed.Id}",
            async (session, audit) =>
            {
                if (await LessonIn(session, changed.Id, cancel) is not Lesson was)
                {
                    return session.Refuse(NoSuchLesson);
                }

                if (was == changed)
                {
                    return session.Unchanged();
                }

                if (await ClassIn(session, changed.ClassId, cancel) is null)
                {
                    return session.Refuse(NoSuchClass);
                }

                await session.Execute(RecordRows.Update("lesson", values), cancel, values);
                session.Tell(changed.Id, RecordChange.Lessons);
                return audit.Changed(RecordJson.Of(was), RecordJson.Of(changed));
            },
            cancel);
    }

    /// <summary>All lessons, the latest day first.</summary>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<Lesson>> Lessons(CancellationToken cancel = default) =>
        await Read($"SELECT {RecordRows.Lesson} FROM lesson WHERE school = @school ORDER BY held_on DESC, id", RecordRows.LessonOf, cancel);

    /// <summary>The lessons of a class, the latest day first.</summary>
    /// <param name="classId">The class.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<IReadOnlyList<Lesson>> LessonsOf(RecordId classId, CancellationToken cancel = default) => await Read(
        $"SELECT {RecordRows.Lesson} FROM lesson WHERE school = @school AND class_id = @class ORDER BY held_on DESC, id", RecordRows.LessonOf, cancel, ("class", classId.ToString()));

    /// <summary>A lesson, or null where there is none of that id.</summary>
    /// <param name="lessonId">Its id.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<Lesson?> FindLesson(RecordId lessonId, CancellationToken cancel = default) => database.Read(s => LessonIn(s, lessonId, cancel), cancel);

    private static Task<Lesson?> LessonIn(Session session, RecordId lessonId, CancellationToken cancel) => session.Find(
        $"SELECT {RecordRows.Lesson} FROM lesson WHERE school = @school AND id = @id", RecordRows.LessonOf, cancel, ("id", lessonId.ToString()));
}
