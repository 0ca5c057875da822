using System.Data.Common;

namespace Calx.Records.Storage;

/// <summary>What the two databases do each in its own way. Statements that both read alike stand with what uses them.</summary>
internal abstract class Dialect : IAsyncDisposable
{
    /// <summary>Folder of the embedded migrations.</summary>
    public abstract string MigrationFolder { get; }

    /// <summary>Where the records are, for sentences: no password in it.</summary>
    public abstract string Place { get; }

    /// <summary>Put behind a SELECT whose rows a transaction is about to change.</summary>
    public abstract string ForUpdate { get; }

    /// <summary>Whether a column's text is one of the parameter that <see cref="List"/> makes.</summary>
    public abstract string IsIn(string column, string parameter);

    /// <summary>What stands behind FROM where the rows of a table are looked up one by one, by the texts of a parameter that
    /// <see cref="List"/> makes; the table's columns go by their own names.</summary>
    public abstract string Among(string table, string column, string parameter);

    public abstract object List(IEnumerable<string> texts);

    public abstract Task<DbConnection> OpenWriter(CancellationToken cancel);

    public abstract Task<DbConnection> OpenReader(CancellationToken cancel);

    /// <summary>A transaction that no other writer is inside of at the same time, as far as the database has such a thing.</summary>
    public abstract Task<DbTransaction> Begin(DbConnection connection, CancellationToken cancel);

    /// <summary>A transaction that sees the database as it is at its first question, and hinders no writer.</summary>
    public abstract Task<DbTransaction> BeginReading(DbConnection connection, CancellationToken cancel);

    /// <summary>Keeps every other program from migrating until the transaction ends.</summary>
    public abstract Task LockForMigration(DbConnection connection, DbTransaction transaction, CancellationToken cancel);

    /// <summary>Whether tables are there, and whether they are ours.</summary>
    public abstract Task<TablesFound> Look(DbConnection connection, DbTransaction transaction, CancellationToken cancel);

    public abstract Task InsertAll(
        DbConnection connection, DbTransaction transaction, string table, string[] columns, IReadOnlyList<object?[]> rows, CancellationToken cancel);

    /// <summary>Tells other programs on the same database, at the commit.</summary>
    public abstract Task Notify(DbConnection connection, DbTransaction transaction, IReadOnlyList<RecordChange> changes, CancellationToken cancel);

    /// <summary>Begins to hear what other programs change; null where none can share the database.</summary>
    public abstract Task<IAsyncDisposable?> Listen(Action<RecordChange> heard, CancellationToken cancel);

    /// <summary>Copies the database to a file while others use it; false where there is no such way.</summary>
    public virtual Task<bool> BackUp(DbConnection connection, string path) => Task.FromResult(false);

    /// <summary>Removes what deleted rows leave in the files, as far as the database lets a program do that.</summary>
    public abstract Task Scrub(DbConnection connection, CancellationToken cancel);

    /// <summary>What an exception of the database means, or null where it is not one of the database's.</summary>
    public abstract StoreTrouble? TroubleOf(Exception fault);

    /// <summary>Whether another transaction came between, so that the whole one can be tried again.</summary>
    public abstract bool IsConflict(Exception fault);

    public abstract ValueTask DisposeAsync();
}
