using System.Data.Common;

namespace Calx.Records.Storage;

/// <summary>One connection that writes, taken in turns, and as many as are needed that read. After any fault the writing connection is
/// made anew, so that the next change succeeds as soon as it can.</summary>
internal sealed class Database(Dialect dialect, string school, TimeProvider time, ChangeFeed feed) : IAsyncDisposable
{
    private const int MostAttempts = 5;

    private readonly SemaphoreSlim turn = new(1, 1);
    private DbConnection? writer;

    public Dialect Dialect => dialect;

    public string School => school;

    public TimeProvider Time => time;

    /// <summary>Makes the tables and the school's row.</summary>
    /// <exception cref="StoreUnavailableException">The database cannot be opened or is not one of ours.</exception>
    public async Task Open(CancellationToken cancel)
    {
        try
        {
            writer = await dialect.OpenWriter(cancel);
            await Migrator.Run(dialect, writer, time, cancel);
        }
        catch (Exception e) when (dialect.TroubleOf(e) is StoreTrouble trouble)
        {
            throw TroubleText.Of(trouble, dialect.Place, e);
        }

        await Change(s => s.Execute("INSERT INTO school (name, audits) VALUES (@school, 0) ON CONFLICT DO NOTHING", cancel), cancel);
    }

    /// <summary>Reads outside any transaction of a writer.</summary>
    /// <exception cref="StoreUnavailableException">The database does not answer.</exception>
    public async Task<T> Read<T>(Func<Session, Task<T>> work, CancellationToken cancel)
    {
        try
        {
            await using DbConnection connection = await dialect.OpenReader(cancel);
            return await work(new Session(dialect, school, connection, null));
        }
        catch (Exception e) when (dialect.TroubleOf(e) is StoreTrouble trouble)
        {
            throw TroubleText.Of(trouble, dialect.Place, e);
        }
    }

    /// <summary>Reads everything as it is at one moment, whatever is written meanwhile.</summary>
    /// <exception cref="StoreUnavailableException">The database does not answer.</exception>
    public async Task<T> ReadAtOnce<T>(Func<Session, Task<T>> work, CancellationToken cancel)
    {
        try
        {
            await using DbConnection connection = await dialect.OpenReader(cancel);
            await using DbTransaction moment = await dialect.BeginReading(connection, cancel);
            return await work(new Session(dialect, school, connection, moment));
        }
        catch (Exception e) when (dialect.TroubleOf(e) is StoreTrouble trouble)
        {
            throw TroubleText.Of(trouble, dialect.Place, e);
        }
    }

    /// <summary>Does all of the work or nothing of it. It may be run several times, where another program came between.</summary>
    /// <exception cref="StoreUnavailableException">It could not be done.</exception>
    public async Task<T> Change<T>(Func<Session, Task<T>> work, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            return await Attempts(work, cancel);
        }
        catch (Exception e) when (dialect.TroubleOf(e) is StoreTrouble trouble)
        {
            throw TroubleText.Of(trouble, dialect.Place, e);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Runs what needs the writing connection without a transaction.</summary>
    public async Task OnWriter(Func<DbConnection, Task> work, CancellationToken cancel)
    {
        await turn.WaitAsync(cancel);
        try
        {
            await work(writer ??= await dialect.OpenWriter(cancel));
        }
        catch (Exception e) when (dialect.TroubleOf(e) is StoreTrouble trouble)
        {
            throw TroubleText.Of(trouble, dialect.Place, e);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <summary>Copies the database to a file as it is at one moment; false where the database is no file.</summary>
    public async Task<bool> BackUp(string path, CancellationToken cancel)
    {
        try
        {
            await using DbConnection reader = await dialect.OpenReader(cancel);
            return await Task.Run(() => dialect.BackUp(reader, path), cancel);
        }
        catch (Exception e) when (dialect.TroubleOf(e) is StoreTrouble trouble)
        {
            throw TroubleText.Of(trouble, path, e);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await Drop();
        await dialect.DisposeAsync();
        turn.Dispose();
    }

    private async Task<T> Attempts<T>(Func<Session, Task<T>> work, CancellationToken cancel)
    {
        for (int attempt = 1; ; attempt++)
        {
            bool wasIdle = writer is not null;
            var progress = new ChangeProgress();
            try
            {
                return await Attempt(work, progress, cancel);
            }
            catch (Exception e)
            {
                await Drop();
                // A connection that died while it lay idle says so at its next use; before the commit nothing can have been kept.
                bool stale = attempt == 1 && wasIdle && !progress.Committing && dialect.TroubleOf(e) == StoreTrouble.ConnectionLost;
                if (!stale && !(attempt < MostAttempts && dialect.IsConflict(e)))
                {
                    throw;
                }
            }
        }
    }

    private async Task<T> Attempt<T>(Func<Session, Task<T>> work, ChangeProgress progress, CancellationToken cancel)
    {
        writer ??= await dialect.OpenWriter(cancel);
        await using DbTransaction transaction = await dialect.Begin(writer, cancel);
        var session = new Session(dialect, school, writer, transaction);
        T result = await work(session);
        if (session.KeepsNothing)
        {
            await transaction.RollbackAsync(cancel);
            return result;
        }

        if (session.Changes.Count > 0)
        {
            await dialect.Notify(writer, transaction, session.Changes, cancel);
        }

        progress.Committing = true;
        // From here on the change is not given up: whether it was kept has to be known.
        await transaction.CommitAsync(CancellationToken.None);
        feed.Publish(session.Changes);
        return result;
    }

    private async Task Drop()
    {
        if (writer is DbConnection broken)
        {
            writer = null;
            await broken.DisposeAsync();
        }
    }
}
