using System.Data.Common;
using Calx.Records.Lessons;

namespace Calx.Records.Storage;

/// <summary>
/// The records of one school, in an SQLite file or a PostgreSQL database. For use from any number of threads; several programs may
/// share a PostgreSQL database. Every change but an entry of a journal writes a line of the audit in the same transaction.
/// Every member may throw a <see cref="StoreUnavailableException"/>; what it says is for the person.
/// </summary>
public sealed partial class RecordStore : IAsyncDisposable
{
    private readonly Database database;
    private readonly ChangeFeed feed;
    private readonly EntryWriter entries;
    private readonly IAsyncDisposable? listener;

    private RecordStore(StoreSettings settings, Database database, ChangeFeed feed, IAsyncDisposable? listener)
    {
        (Settings, this.database, this.feed, this.listener) = (settings, database, feed, listener);
        entries = new EntryWriter(database);
    }

    /// <summary>Where the records are, and whose.</summary>
    public StoreSettings Settings { get; }

    /// <summary>Opens the records; makes the file or the tables where there are none, and brings older ones up to date.</summary>
    /// <param name="settings">Where, and whose.</param>
    /// <param name="time">The clock for 'received at' and the audit.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="StoreUnavailableException">They cannot be opened: the reason is for the person.</exception>
    public static async Task<RecordStore> Open(StoreSettings settings, TimeProvider time, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(time);
        Dialect dialect = settings.IsPostgres ? new PostgresDialect(settings) : new SqliteDialect(settings.Connection, settings.PatienceInSeconds);
        var feed = new ChangeFeed();
        var database = new Database(dialect, settings.School, time, feed);
        try
        {
            await database.Open(cancel);
            return new RecordStore(settings, database, feed, await dialect.Listen(feed.Publish, cancel));
        }
        catch
        {
            await database.DisposeAsync();
            await feed.DisposeAsync();
            throw;
        }
    }

    /// <summary>Calls after every commit: changes of this program at once, those of others on the same PostgreSQL database as they
    /// are heard of. Calls come one after the other, from a task of the store's; one that throws is passed over.</summary>
    /// <param name="changed">Told what changed. What it needs it reads from the store.</param>
    /// <returns>Disposed to end the calls.</returns>
    public IDisposable Watch(Action<RecordChange> changed)
    {
        ArgumentNullException.ThrowIfNull(changed);
        return feed.Watch(changed);
    }

    /// <summary>Writes what still waits, then closes.</summary>
    public async ValueTask DisposeAsync()
    {
        await entries.DisposeAsync();
        if (listener is not null)
        {
            await listener.DisposeAsync();
        }

        await database.DisposeAsync();
        await feed.DisposeAsync();
    }

    private Task<List<T>> Read<T>(string sql, Func<DbDataReader, T> row, CancellationToken cancel, params (string Name, object? Value)[] values) =>
        database.Read(s => s.Query(sql, row, cancel, values), cancel);

    private async Task<T?> Find<T>(string sql, Func<DbDataReader, T> row, CancellationToken cancel, params (string Name, object? Value)[] values)
        where T : class => (await Read(sql, row, cancel, values)).FirstOrDefault();

    /// <summary>Makes a change with its line in the audit. The line is numbered first: the school's row is what changes of one
    /// school wait for, so that what is looked up before a change holds till its end.</summary>
    private Task<ChangeResult> Change(string by, string what, string subject, Func<Session, AuditParts, Task<ChangeResult>> work, CancellationToken cancel)
    {
        KeptText.Needed(by, AuditParts.LongestBy, nameof(by));
        return database.Change<ChangeResult>(
            async session =>
            {
                AuditParts audit = await AuditParts.Begin(session, cancel);
                ChangeResult result = await work(session, audit);
                if (!session.KeepsNothing)
                {
                    await AuditParts.Write(session, new AuditLine(audit.Number, database.Time.GetUtcNow(), by, what, subject, audit.Before, audit.After), cancel);
                }

                return result;
            },
            cancel);
    }
}
