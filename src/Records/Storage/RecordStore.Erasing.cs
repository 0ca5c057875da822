using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>The only two ways in which anything is taken out. Whoever calls them has exported before and asked twice.</summary>
public sealed partial class RecordStore
{
    /// <summary>Forgets the names of a class's members: they are numbers from then on, in the audit too. Readings and lessons stay.
    /// What was freed is overwritten where the database can do that.</summary>
    /// <param name="classId">The class.</param>
    /// <param name="by">Who asks for it.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<ChangeResult> ForgetNames(RecordId classId, string by, CancellationToken cancel = default)
    {
        ChangeResult result = await Change(
            by,
            "names-forgotten",
            $"class {classId}",
            async (session, audit) =>
            {
                if (await ClassIn(session, classId, cancel) is not SchoolClass was)
                {
                    return session.Refuse(NoSuchClass);
                }

                if (was.NamesForgotten)
                {
                    return session.Unchanged();
                }

                (string, object?) id = ("id", classId.ToString());
                int members = await session.Execute("UPDATE member SET name = '' WHERE school = @school AND class_id = @id", cancel, id);
                await session.Execute("UPDATE class SET names_forgotten = 1 WHERE school = @school AND id = @id", cancel, id);
                await session.Execute(
                    "UPDATE audit SET was = NULL, became = NULL WHERE school = @school AND what = 'member-put' AND subject LIKE @subject", cancel, ("subject", $"member {classId}/%"));
                session.Tell(null, RecordChange.Classes);
                return audit.Said(FormattableString.Invariant($"{members} names"));
            },
            cancel);
        await Scrub(result, cancel);
        return result;
    }

    /// <summary>Deletes a lesson with its journal. That it was there stays in the audit.</summary>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="by">Who asks for it.</param>
    /// <param name="cancel">Gives up.</param>
    public async Task<ChangeResult> DeleteLesson(RecordId lessonId, string by, CancellationToken cancel = default)
    {
        ChangeResult result = await Change(
            by,
            "lesson-deleted",
            $"lesson {lessonId}",
            async (session, audit) =>
            {
                if (await LessonIn(session, lessonId, cancel) is not Lesson was)
                {
                    return session.Refuse(NoSuchLesson);
                }

                (string, object?) lesson = ("lesson", lessonId.ToString());
                // What another program is just adding is waited for and goes too; what it adds later is refused, for there is no journal.
                await session.Any($"SELECT 1 FROM journal WHERE school = @school AND lesson_id = @lesson{session.Dialect.ForUpdate}", cancel, lesson);
                int entries = await session.Execute("DELETE FROM entry WHERE school = @school AND lesson_id = @lesson", cancel, lesson);
                await session.Execute("DELETE FROM journal WHERE school = @school AND lesson_id = @lesson", cancel, lesson);
                await session.Execute("DELETE FROM door WHERE school = @school AND lesson_id = @lesson", cancel, lesson);
                await session.Execute("DELETE FROM lesson WHERE school = @school AND id = @lesson", cancel, lesson);
                session.Tell(lessonId, RecordChange.Lessons);
                return audit.Said(FormattableString.Invariant($"{was.PracticalId} of {Written.Date(was.Date)}, {entries} entries"));
            },
            cancel);
        await Scrub(result, cancel);
        return result;
    }

    /// <summary>Copies the whole database while it is in use. On PostgreSQL, whose server has its own means, it writes an archive of
    /// this school instead.</summary>
    /// <param name="path">A file that is not there yet.</param>
    /// <param name="groups">What the groups are called in the tables of an archive; null for their numbers.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="IOException">There is such a file, or it cannot be written.</exception>
    /// <exception cref="StoreUnavailableException">The database does not answer, or there is no room for the copy; none is left.</exception>
    public async Task BackUp(string path, Archive.GroupsOfTable? groups, CancellationToken cancel = default)
    {
        await using (new FileStream(path, FileMode.CreateNew, FileAccess.Write))
        {
            // Made here, so that no file of that name is ever written over.
        }

        try
        {
            if (!await database.BackUp(path, cancel))
            {
                await using var file = new FileStream(path, FileMode.Open, FileAccess.Write);
                await Archive.LessonArchive.WriteAll(this, file, groups, cancel);
                file.Flush(flushToDisk: true);
            }
        }
        catch
        {
            // Half a backup would be taken for one.
            File.Delete(path);
            throw;
        }
    }

    private Task Scrub(ChangeResult result, CancellationToken cancel) => result is ChangeResult.Done
        ? database.OnWriter(writer => database.Dialect.Scrub(writer, cancel), cancel) : Task.CompletedTask;
}
