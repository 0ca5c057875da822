using System.Data.Common;
using Calx.Records.Storage;
using Microsoft.Data.Sqlite;

namespace Calx.Records.Tests.Places;

/// <summary>Files in a folder of their own, deleted at the end.</summary>
public sealed class SqlitePlace : Place
{
    private int files;

    public string Folder { get; } = Directory.CreateTempSubdirectory("calx-records-").FullName;

    public override Task<StoreSettings> Fresh(string school = "Larkmoor School") =>
        Task.FromResult(new StoreSettings(Path.Combine(Folder, FormattableString.Invariant($"records-{Interlocked.Increment(ref files)}.db")), school, patienceInSeconds: 1));

    public override string TakeLock => "BEGIN EXCLUSIVE";

    public override async Task<DbConnection> Beside(StoreSettings settings)
    {
        var connection = new SqliteConnection($"Data Source={settings.Connection};Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        return connection;
    }

    public override ValueTask DisposeAsync()
    {
        Directory.Delete(Folder, recursive: true);
        return base.DisposeAsync();
    }
}
