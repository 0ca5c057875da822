using Calx.Records.Archive;

namespace Calx.Records.Storage;

/// <summary>Writing everything out, and taking in what another database, or this one earlier, has written out.</summary>
public sealed partial class RecordStore
{
    /// <summary>Adds what is not there. All of it in one transaction with one line of the audit.</summary>
    internal async Task<ImportResult.Taken> Import(ArchiveContent content, string by, CancellationToken cancel)
    {
        ArchiveIntake? intake = null;
        ChangeResult result = await Change(
            by,
            "archive-taken-in",
            "records",
            async (session, audit) =>
            {
                // Run again where another program came between: it counts anew.
                intake = new ArchiveIntake(session, cancel);
                await intake.Take(content);
                if (intake.Added == 0)
                {
                    return session.Unchanged();
                }

                session.Tell(null, RecordChange.Everything);
                return audit.Said(FormattableString.Invariant($"{intake.Added} added, {intake.Known} known, {intake.Refused.Count} refused"));
            },
            cancel);
        return result is ChangeResult.Refused refused
            ? new ImportResult.Taken(0, 0, [refused.Reason])
            : new ImportResult.Taken(intake!.Added, intake.Known, intake.Refused);
    }

    /// <summary>Everything, or one lesson and what belongs to it, as it is at one moment; null where there is no such lesson.</summary>
    internal Task<ArchiveContent?> Gather(RecordId? lessonId, CancellationToken cancel) => database.ReadAtOnce(
        session =>
        {
            var gathering = new ArchiveGathering(session, cancel);
            return lessonId is RecordId id ? gathering.OfLesson(id) : All(gathering);
        },
        cancel);

    private static async Task<ArchiveContent?> All(ArchiveGathering gathering) => await gathering.OfAll();
}
