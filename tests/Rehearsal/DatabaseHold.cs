using Microsoft.Data.Sqlite;

namespace Calx.Rehearsal;

/// <summary>Holds a database as another program would that writes and does not finish.</summary>
public sealed class DatabaseHold : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly SqliteTransaction transaction;

    private DatabaseHold(SqliteConnection connection)
    {
        this.connection = connection;
        connection.Open();
        transaction = connection.BeginTransaction();
    }

    /// <summary>Takes hold of a file.</summary>
    public static DatabaseHold Of(string path) =>
        new(new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString()));

    public void Dispose()
    {
        transaction.Dispose();
        connection.Dispose();
    }
}
