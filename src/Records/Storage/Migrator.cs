using System.Data.Common;
using System.Globalization;

namespace Calx.Records.Storage;

/// <summary>Brings a database's tables from the version that it has to the one that this program knows, by numbered SQL files, all
/// in one transaction: it is done whole or not at all, and by one program at a time.</summary>
internal static class Migrator
{
    public const string Table = "migration";

    /// <exception cref="StoreUnavailableException">The tables are of a newer version, or not ours.</exception>
    public static async Task Run(Dialect dialect, DbConnection connection, TimeProvider time, CancellationToken cancel)
    {
        await using DbTransaction transaction = await dialect.Begin(connection, cancel);
        await dialect.LockForMigration(connection, transaction, cancel);
        long version = await dialect.Look(connection, transaction, cancel) switch
        {
            TablesFound.Others => throw TroubleText.Of(StoreTrouble.NotOurDatabase, dialect.Place, new InvalidOperationException("tables of another program")),
            TablesFound.None => await Begin(connection, transaction, cancel),
            _ => await Version(connection, transaction, cancel),
        };
        Migration[] known = [.. Migration.Of(dialect.MigrationFolder)];
        if (version > known[^1].Number)
        {
            throw TroubleText.Newer(dialect.Place, version, known[^1].Number);
        }

        foreach (Migration migration in known.Where(m => m.Number > version))
        {
            await Execute(connection, transaction, migration.Sql, cancel);
            string at = time.GetUtcNow().ToString("O", CultureInfo.InvariantCulture);
            await Execute(connection, transaction, FormattableString.Invariant($"INSERT INTO {Table} VALUES ({migration.Number}, '{migration.Name}', '{at}')"), cancel);
        }

        await transaction.CommitAsync(cancel);
    }

    private static async Task<long> Begin(DbConnection connection, DbTransaction transaction, CancellationToken cancel)
    {
        await Execute(connection, transaction, $"CREATE TABLE {Table} (number bigint NOT NULL PRIMARY KEY, name text NOT NULL, done_at text NOT NULL)", cancel);
        return 0;
    }

    private static async Task<long> Version(DbConnection connection, DbTransaction transaction, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = $"SELECT coalesce(max(number), 0) FROM {Table}";
        return Convert.ToInt64(await command.ExecuteScalarAsync(cancel), CultureInfo.InvariantCulture);
    }

    private static async Task Execute(DbConnection connection, DbTransaction transaction, string sql, CancellationToken cancel)
    {
        await using DbCommand command = connection.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(cancel);
    }
}
