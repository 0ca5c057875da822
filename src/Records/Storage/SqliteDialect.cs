using System.Data.Common;
using System.Text.Json;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace Calx.Records.Storage;

/// <summary>SQLite: one file, write-ahead log, every commit on the disk before it counts, one writer.</summary>
internal sealed class SqliteDialect(string path, int patienceInSeconds) : Dialect
{
    public override string MigrationFolder => "Sqlite";

    public override string Place => path;

    /// <summary>Nothing: a transaction that writes is alone.</summary>
    public override string ForUpdate => "";

    private string ConnectionText => new SqliteConnectionStringBuilder
    {
        DataSource = path,
        ForeignKeys = true,
        // The library asks again once a second beyond the wait of SQLite itself, which busy_timeout sets.
        DefaultTimeout = 1,
    }.ToString();

    public override string IsIn(string column, string parameter) => $"{column} IN (SELECT value FROM json_each({parameter}))";

    /// <summary>CROSS JOIN keeps the order: with IN, and no statistics to tell it better, SQLite walks the whole table.</summary>
    public override string Among(string table, string column, string parameter) =>
        $"(SELECT value AS wanted FROM json_each({parameter})) AS asked CROSS JOIN {table} ON {table}.{column} = asked.wanted";

    public override object List(IEnumerable<string> texts) => JsonSerializer.Serialize(texts.ToArray(), TextJson.Default.StringArray);

    public override async Task<DbConnection> OpenWriter(CancellationToken cancel)
    {
        var connection = new SqliteConnection(ConnectionText + ";Pooling=False");
        return await Opened(connection, "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA secure_delete = ON;", cancel);
    }

    public override Task<DbConnection> OpenReader(CancellationToken cancel) =>
        Opened(new SqliteConnection(ConnectionText), "PRAGMA query_only = ON;", cancel);

    public override Task<DbTransaction> Begin(DbConnection connection, CancellationToken cancel) =>
        Task.FromResult<DbTransaction>(((SqliteConnection)connection).BeginTransaction(deferred: false));

    public override Task<DbTransaction> BeginReading(DbConnection connection, CancellationToken cancel) =>
        Task.FromResult<DbTransaction>(((SqliteConnection)connection).BeginTransaction(deferred: true));

    /// <summary>Nothing more: the transaction holds the file's lock already.</summary>
    public override Task LockForMigration(DbConnection connection, DbTransaction transaction, CancellationToken cancel) => Task.CompletedTask;

    public override async Task<TablesFound> Look(DbConnection connection, DbTransaction transaction, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table'";
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancel);
        TablesFound found = TablesFound.None;
        while (await reader.ReadAsync(cancel))
        {
            found = found == TablesFound.Ours || reader.GetString(0) == Migrator.Table ? TablesFound.Ours : TablesFound.Others;
        }

        return found;
    }

    public override async Task InsertAll(
        DbConnection connection, DbTransaction transaction, string table, string[] columns, IReadOnlyList<object?[]> rows, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = $"INSERT INTO {table} ({string.Join(", ", columns)}) VALUES ({string.Join(", ", columns.Select(c => "@" + c))})";
        foreach (string column in columns)
        {
            command.Parameters.Add(new SqliteParameter { ParameterName = column });
        }

        foreach (object?[] row in rows)
        {
            for (int i = 0; i < columns.Length; i++)
            {
                command.Parameters[i].Value = row[i] ?? DBNull.Value;
            }

            await command.ExecuteNonQueryAsync(cancel);
        }
    }

    /// <summary>Nothing: no other program is served from the same file.</summary>
    public override Task Notify(DbConnection connection, DbTransaction transaction, IReadOnlyList<RecordChange> changes, CancellationToken cancel) =>
        Task.CompletedTask;

    public override Task<IAsyncDisposable?> Listen(Action<RecordChange> heard, CancellationToken cancel) => Task.FromResult<IAsyncDisposable?>(null);

    public override async Task<bool> BackUp(DbConnection connection, string path)
    {
        await using var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
        await copy.OpenAsync();
        ((SqliteConnection)connection).BackupDatabase(copy);
        return true;
    }

    /// <summary>Deleted rows are overwritten with zeros (<c>secure_delete</c>); the log, which holds older pages, is emptied.</summary>
    public override async Task Scrub(DbConnection connection, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
        await command.ExecuteNonQueryAsync(cancel);
    }

    public override StoreTrouble? TroubleOf(Exception fault) => (fault as SqliteException)?.SqliteErrorCode switch
    {
        null => null,
        raw.SQLITE_FULL => StoreTrouble.DiskFull,
        raw.SQLITE_BUSY or raw.SQLITE_LOCKED => StoreTrouble.Locked,
        raw.SQLITE_READONLY or raw.SQLITE_PERM => StoreTrouble.ReadOnly,
        raw.SQLITE_CANTOPEN or raw.SQLITE_AUTH => StoreTrouble.CannotOpen,
        raw.SQLITE_NOTADB => StoreTrouble.NotOurDatabase,
        raw.SQLITE_CORRUPT => StoreTrouble.Damaged,
        _ => StoreTrouble.Failed,
    };

    /// <summary>Never: a writing transaction is alone.</summary>
    public override bool IsConflict(Exception fault) => false;

    public override ValueTask DisposeAsync()
    {
        // Pooled readers keep the file open, which hinders moving or deleting it.
        using var connection = new SqliteConnection(ConnectionText);
        SqliteConnection.ClearPool(connection);
        return ValueTask.CompletedTask;
    }

    private async Task<DbConnection> Opened(SqliteConnection connection, string pragmas, CancellationToken cancel)
    {
        try
        {
            await connection.OpenAsync(cancel);
            await using SqliteCommand command = connection.CreateCommand();
            command.CommandText = FormattableString.Invariant($"PRAGMA busy_timeout = {1000 * patienceInSeconds}; {pragmas}");
            await command.ExecuteNonQueryAsync(cancel);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }
}
