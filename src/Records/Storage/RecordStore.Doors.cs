using System.Diagnostics;
using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>The codes by which devices join a lesson.</summary>
public sealed partial class RecordStore
{
    /// <summary>Opens a lesson's door with new codes; one that is open stays as it is.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="by">Who opens it.</param>
    /// <param name="cancel">Gives up.</param>
    /// <returns>The open door, or null where there is no such lesson.</returns>
    public async Task<LessonDoor?> OpenDoor(RecordId lessonId, string by, CancellationToken cancel = default)
    {
        ChangeResult result = await Change(
            by,
            "door-opened",
            $"lesson {lessonId}",
            async (session, audit) =>
            {
                if (await LessonIn(session, lessonId, cancel) is null)
                {
                    return session.Refuse(NoSuchLesson);
                }

                if (await DoorIn(session, lessonId, cancel) is { IsOpen: true })
                {
                    return session.Unchanged();
                }

                await AddDoor(session, lessonId, cancel);
                session.Tell(lessonId, RecordChange.Doors);
                // The codes let people in and are not for the audit.
                return audit.Said();
            },
            cancel);
        return result is ChangeResult.Done ? await DoorOf(lessonId, cancel) : null;
    }

    /// <summary>Closes a lesson's door: its codes let nobody in any more.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="by">Who closes it.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<ChangeResult> CloseDoor(RecordId lessonId, string by, CancellationToken cancel = default) => Change(
        by,
        "door-closed",
        $"lesson {lessonId}",
        async (session, audit) =>
        {
            int closed = await session.Execute(
                "UPDATE door SET closed_at = @now WHERE school = @school AND lesson_id = @lesson AND closed_at IS NULL",
                cancel,
                ("now", Written.Time(database.Time.GetUtcNow())),
                ("lesson", lessonId.ToString()));
            if (closed == 0)
            {
                return session.Unchanged();
            }

            session.Tell(lessonId, RecordChange.Doors);
            return audit.Said();
        },
        cancel);

    /// <summary>The open door of a code, or null. Case, blanks and hyphens do not matter.</summary>
    /// <param name="code">The students' code or a station's, as typed. Compare it with <see cref="LessonDoor.StationCode"/> to tell which.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<LessonDoor?> FindDoor(string code, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(code);
        string typed = code.Length <= 40 ? DoorCode.Typed(code) : "";
        return typed.Length is not (DoorCode.Letters or DoorCode.StationLetters)
            ? null
            : await Find(
                $"SELECT {RecordRows.Door} FROM door WHERE school = @school AND (code = @code OR station_code = @code) AND closed_at IS NULL",
                RecordRows.DoorOf,
                cancel,
                ("code", typed));
    }

    /// <summary>A lesson's door, the last where it had several; null where it never had one.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="cancel">Gives up.</param>
    public Task<LessonDoor?> DoorOf(RecordId lessonId, CancellationToken cancel = default) => database.Read(s => DoorIn(s, lessonId, cancel), cancel);

    private static Task<LessonDoor?> DoorIn(Session session, RecordId lessonId, CancellationToken cancel) => session.Find(
        $"SELECT {RecordRows.Door} FROM door WHERE school = @school AND lesson_id = @lesson ORDER BY number DESC LIMIT 1", RecordRows.DoorOf, cancel, ("lesson", lessonId.ToString()));

    private async Task AddDoor(Session session, RecordId lessonId, CancellationToken cancel)
    {
        var door = new LessonDoor(
            lessonId,
            await FreeCode(session, DoorCode.Letters, cancel),
            await FreeCode(session, DoorCode.StationLetters, cancel),
            database.Time.GetUtcNow(),
            null);
        long number = (await session.Query(
            "SELECT coalesce(max(number), 0) + 1 FROM door WHERE school = @school AND lesson_id = @lesson", row => row.GetInt64(0), cancel, ("lesson", lessonId.ToString())))[0];
        (string Name, object? Value)[] values = [("number", number), .. RecordRows.Of(door)];
        await session.Execute(RecordRows.Insert("door", values), cancel, values);
    }

    private static async Task<string> FreeCode(Session session, int letters, CancellationToken cancel)
    {
        // Twenty-four million codes of six letters: a second draw is rare, a twentieth never happens.
        for (int draw = 0; draw < 20; draw++)
        {
            string code = DoorCode.Draw(letters);
            if (!await session.Any("SELECT 1 FROM door WHERE school = @school AND (code = @code OR station_code = @code) AND closed_at IS NULL", cancel, ("code", code)))
            {
                return code;
            }
        }

        throw new UnreachableException("Twenty codes drawn at random were all taken.");
    }
}
