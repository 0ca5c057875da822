using System.Data.Common;
using Calx.Records.Storage;

namespace Calx.Records.Tests.Places;

/// <summary>Where a test keeps records: fresh and empty, of one kind of database.</summary>
public abstract class Place : IAsyncLifetime
{
    /// <summary>The clock of the tests' stores.</summary>
    public TestClock Clock { get; } = new();

    /// <summary>A place where nothing was ever kept.</summary>
    public abstract Task<StoreSettings> Fresh(string school = "Larkmoor School");

    /// <summary>A connection beside the store's, as another program has it.</summary>
    public abstract Task<DbConnection> Beside(StoreSettings settings);

    /// <summary>What keeps every other program from writing while its transaction lasts.</summary>
    public abstract string TakeLock { get; }

    /// <summary>Runs statements beside the store.</summary>
    public async Task Execute(StoreSettings settings, string sql)
    {
        await using DbConnection connection = await Beside(settings);
        await Execute(connection, sql);
    }

    public static async Task Execute(DbConnection connection, string sql)
    {
        await using DbCommand command = connection.CreateCommand();
        command.CommandText = sql;
        await command.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
    }

    public Task<RecordStore> Open(StoreSettings settings) => RecordStore.Open(settings, Clock, TestContext.Current.CancellationToken);

    public async Task<RecordStore> OpenFresh() => await Open(await Fresh());

    public virtual ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public virtual ValueTask DisposeAsync()
    {
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }
}
