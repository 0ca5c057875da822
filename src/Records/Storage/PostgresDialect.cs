using System.Data;
using System.Data.Common;
using System.Net.Sockets;
using Npgsql;
using NpgsqlTypes;

namespace Calx.Records.Storage;

/// <summary>PostgreSQL: several programs share the records and hear of each other's changes.</summary>
internal sealed class PostgresDialect : Dialect
{
    /// <summary>Drawn once for this program's migrations; an advisory lock is a number that all agree on.</summary>
    private const long MigrationLock = 0x63616C78_0001;

    private readonly NpgsqlDataSource source;
    private readonly PostgresChannel channel;
    private readonly int patienceInSeconds;

    /// <exception cref="StoreUnavailableException">The connection cannot be read.</exception>
    public PostgresDialect(StoreSettings settings)
    {
        NpgsqlConnectionStringBuilder connection = PostgresAddress.Read(settings.Connection);
        connection.ApplicationName ??= "calx";
        source = NpgsqlDataSource.Create(connection);
        channel = new PostgresChannel(source, settings.School);
        patienceInSeconds = settings.PatienceInSeconds;
        Place = $"database {connection.Database ?? connection.Username} on {connection.Host}";
    }

    public override string MigrationFolder => "Postgres";

    public override string Place { get; }

    public override string ForUpdate => " FOR UPDATE";

    public override string IsIn(string column, string parameter) => $"{column} = ANY({parameter})";

    public override string Among(string table, string column, string parameter) =>
        $"unnest({parameter}) AS asked (wanted) JOIN {table} ON {table}.{column} = asked.wanted";

    public override object List(IEnumerable<string> texts) => texts.ToArray();

    public override async Task<DbConnection> OpenWriter(CancellationToken cancel)
    {
        NpgsqlConnection connection = await source.OpenConnectionAsync(cancel);
        try
        {
            await using NpgsqlCommand command = connection.CreateCommand();
            // A server set to answer before a commit is on its disk would make 'kept' untrue.
            command.CommandText = FormattableString.Invariant($"SET lock_timeout = '{patienceInSeconds}s'; SET synchronous_commit = on");
            await command.ExecuteNonQueryAsync(cancel);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    public override async Task<DbConnection> OpenReader(CancellationToken cancel) => await source.OpenConnectionAsync(cancel);

    public override async Task<DbTransaction> Begin(DbConnection connection, CancellationToken cancel) => await connection.BeginTransactionAsync(cancel);

    public override async Task<DbTransaction> BeginReading(DbConnection connection, CancellationToken cancel) =>
        await connection.BeginTransactionAsync(IsolationLevel.RepeatableRead, cancel);

    public override Task LockForMigration(DbConnection connection, DbTransaction transaction, CancellationToken cancel) =>
        Run(connection, FormattableString.Invariant($"SET LOCAL lock_timeout = '60s'; SELECT pg_advisory_xact_lock({MigrationLock})"), cancel);

    public override async Task<TablesFound> Look(DbConnection connection, DbTransaction transaction, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = $"SELECT to_regclass('{Migrator.Table}') IS NOT NULL, to_regclass('school') IS NOT NULL";
        await using DbDataReader reader = await command.ExecuteReaderAsync(cancel);
        await reader.ReadAsync(cancel);
        // Tables of others may stand beside ours, but not one under a name that we need.
        return reader.GetBoolean(0) ? TablesFound.Ours : reader.GetBoolean(1) ? TablesFound.Others : TablesFound.None;
    }

    public override async Task InsertAll(
        DbConnection connection, DbTransaction transaction, string table, string[] columns, IReadOnlyList<object?[]> rows, CancellationToken cancel)
    {
        await using NpgsqlBinaryImporter importer = await ((NpgsqlConnection)connection).BeginBinaryImportAsync(
            $"COPY {table} ({string.Join(", ", columns)}) FROM STDIN (FORMAT BINARY)", cancel);
        foreach (object?[] row in rows)
        {
            await importer.StartRowAsync(cancel);
            foreach (object? value in row)
            {
                await Write(importer, value, cancel);
            }
        }

        await importer.CompleteAsync(cancel);
    }

    public override Task Notify(DbConnection connection, DbTransaction transaction, IReadOnlyList<RecordChange> changes, CancellationToken cancel) =>
        channel.Tell(connection, changes, cancel);

    public override async Task<IAsyncDisposable?> Listen(Action<RecordChange> heard, CancellationToken cancel) =>
        await PostgresListener.Start(source, channel, heard, cancel);

    /// <summary>Nothing: the server's vacuum takes dead rows away in its own time.</summary>
    public override Task Scrub(DbConnection connection, CancellationToken cancel) => Task.CompletedTask;

    public override StoreTrouble? TroubleOf(Exception fault) => fault switch
    {
        PostgresException reported => OfState(reported.SqlState),
        NpgsqlException or SocketException or TimeoutException or IOException => StoreTrouble.ConnectionLost,
        _ => null,
    };

    public override bool IsConflict(Exception fault) => fault is PostgresException
    {
        SqlState: PostgresErrorCodes.UniqueViolation or PostgresErrorCodes.SerializationFailure or PostgresErrorCodes.DeadlockDetected,
    };

    public override ValueTask DisposeAsync() => source.DisposeAsync();

    private static StoreTrouble OfState(string state) => state switch
    {
        PostgresErrorCodes.DiskFull or PostgresErrorCodes.OutOfMemory => StoreTrouble.DiskFull,
        PostgresErrorCodes.LockNotAvailable => StoreTrouble.Locked,
        PostgresErrorCodes.ReadOnlySqlTransaction or PostgresErrorCodes.InsufficientPrivilege => StoreTrouble.ReadOnly,
        PostgresErrorCodes.InvalidCatalogName or PostgresErrorCodes.InvalidPassword or PostgresErrorCodes.InvalidAuthorizationSpecification => StoreTrouble.CannotOpen,
        PostgresErrorCodes.TooManyConnections => StoreTrouble.ConnectionLost,
        // 08: connection; 57P: the server shuts down or starts.
        _ when state.StartsWith("08", StringComparison.Ordinal) || state.StartsWith("57P", StringComparison.Ordinal) => StoreTrouble.ConnectionLost,
        _ when state.StartsWith("XX", StringComparison.Ordinal) => StoreTrouble.Damaged,
        _ => StoreTrouble.Failed,
    };

    private static Task Write(NpgsqlBinaryImporter importer, object? value, CancellationToken cancel) => value switch
    {
        null => importer.WriteNullAsync(cancel),
        long number => importer.WriteAsync(number, NpgsqlDbType.Bigint, cancel),
        string text => importer.WriteAsync(text, NpgsqlDbType.Text, cancel),
        _ => throw new ArgumentException($"A column holds text or a whole number, not {value.GetType().Name}.", nameof(value)),
    };

    private static async Task Run(DbConnection connection, string sql, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(cancel);
    }
}
