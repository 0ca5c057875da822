using System.Data.Common;
using System.Threading.Channels;
using Calx.Records.Journal;

namespace Calx.Records.Storage;

/// <summary>The one who writes entries. All that wait are written in one transaction and answered when it is on the disk, so that
/// thirty people who type at once cost one wait for the disk and not thirty.</summary>
internal sealed class EntryWriter : IAsyncDisposable
{
    /// <summary>Most entries of a transaction: more would make the first of them wait long on a slow disk.</summary>
    public const int MostInGroup = 500;

    /// <summary>Most that wait; who sends more waits before the door, so that memory stays bounded.</summary>
    private const int MostWaiting = 20_000;

    private readonly Database database;
    private readonly Channel<WaitingEntry> waiting = Channel.CreateBounded<WaitingEntry>(new BoundedChannelOptions(MostWaiting) { SingleReader = true });
    private readonly Task running;

    public EntryWriter(Database database)
    {
        this.database = database;
        running = Task.Run(Run);
    }

    /// <exception cref="StoreUnavailableException">It could not be kept, or this was not to be found out; sending it again is safe.</exception>
    public async Task<AppendResult> Append(RecordId lesson, JournalEntry entry, CancellationToken cancel)
    {
        var one = new WaitingEntry(lesson, entry);
        try
        {
            await waiting.Writer.WriteAsync(one, cancel);
        }
        catch (ChannelClosedException)
        {
            throw new ObjectDisposedException(nameof(RecordStore));
        }

        return await one.Answer.Task.WaitAsync(cancel);
    }

    public async ValueTask DisposeAsync()
    {
        waiting.Writer.TryComplete();
        await running;
    }

    private async Task Run()
    {
        var group = new List<WaitingEntry>();
        while (await waiting.Reader.WaitToReadAsync())
        {
            group.Clear();
            while (group.Count < MostInGroup && waiting.Reader.TryRead(out WaitingEntry? one))
            {
                group.Add(one);
            }

            await Write(group);
        }
    }

    private async Task Write(List<WaitingEntry> group)
    {
        try
        {
            AppendResult[] results = await database.Change(s => Keep(s, group), CancellationToken.None);
            for (int i = 0; i < results.Length; i++)
            {
                group[i].Answer.SetResult(results[i]);
            }
        }
#pragma warning disable CA1031 // Whatever the fault, those who wait are told, and the writer goes on with the next.
        catch (Exception e)
#pragma warning restore CA1031
        {
            group.ForEach(w => w.Answer.TrySetException(e));
        }
    }

    private async Task<AppendResult[]> Keep(Session session, List<WaitingEntry> group)
    {
        Dictionary<RecordId, long> ends = await LockedEnds(session, group);
        var judge = new EntryJudge(ends, await Known(session, group.Select(w => w.Entry.Id), CancellationToken.None), database.Time.GetUtcNow());
        AppendResult[] results = [.. group.Select(judge.Judge)];
        if (judge.Added.Count > 0)
        {
            await session.InsertAll("entry", EntryRow.Columns, [.. judge.Added.Select(a => EntryRow.Of(session.School, a.Lesson, a.Kept))], CancellationToken.None);
            foreach (RecordId lesson in judge.Added.Select(a => a.Lesson).Distinct())
            {
                await session.Execute(
                    "UPDATE journal SET entries = @entries WHERE school = @school AND lesson_id = @lesson", CancellationToken.None, ("entries", ends[lesson]), ("lesson", lesson.ToString()));
                session.Tell(lesson, RecordChange.Entries);
            }
        }

        return results;
    }

    /// <summary>How long each journal is, locked against other writers till the commit, in one order so that two never wait for each other.</summary>
    private static async Task<Dictionary<RecordId, long>> LockedEnds(Session session, List<WaitingEntry> group)
    {
        List<(RecordId Lesson, long Entries)> rows = await session.Query(
            $"SELECT lesson_id, entries FROM journal WHERE school = @school AND {session.Dialect.IsIn("lesson_id", "@lessons")} ORDER BY lesson_id{session.Dialect.ForUpdate}",
            row => (row.Id(0), row.GetInt64(1)),
            CancellationToken.None,
            ("lessons", session.Dialect.List(group.Select(w => w.Lesson.ToString()).Distinct())));
        return rows.ToDictionary(r => r.Lesson, r => r.Entries);
    }

    /// <summary>The entries of the school that have one of some ids.</summary>
    public static async Task<Dictionary<EntryId, (RecordId Lesson, KeptEntry Kept)>> Known(
        Session session, IEnumerable<EntryId> ids, CancellationToken cancel)
    {
        List<(RecordId Lesson, KeptEntry Kept)> rows = await session.Query(
            $"SELECT {EntryRow.Selected}, lesson_id FROM {session.Dialect.Among("entry", "id", "@ids")} WHERE school = @school",
            row => (row.Id(EntryRow.Columns.Length - 2), EntryRow.Read(row)),
            cancel,
            ("ids", session.Dialect.List(ids.Select(id => id.ToString()).Distinct())));
        return rows.ToDictionary(r => r.Kept.Entry.Id);
    }
}
