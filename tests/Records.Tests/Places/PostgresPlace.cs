using System.Data.Common;
using Calx.Records.Storage;
using Npgsql;

namespace Calx.Records.Tests.Places;

/// <summary>Schemas of the tests' own server.</summary>
public sealed class PostgresPlace(PostgresCluster cluster) : Place
{
    /// <summary>Ends all connections of a program, as a restart of the server or a cut line does.</summary>
    public Task Cut(StoreSettings settings, string program) => Execute(
        new StoreSettings(settings.Connection.Replace(program, "scissors", StringComparison.Ordinal)),
        $"SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = '{program}'");

    public override string TakeLock => "BEGIN; LOCK TABLE school, journal, entry IN ACCESS EXCLUSIVE MODE";

    public override async Task<DbConnection> Beside(StoreSettings settings)
    {
        var connection = new NpgsqlConnection(settings.Connection + ";Pooling=False");
        await connection.OpenAsync(TestContext.Current.CancellationToken);
        return connection;
    }

    public override async Task<StoreSettings> Fresh(string school = "Larkmoor School") => new(await cluster.FreshSchema(), school, patienceInSeconds: 1);
}
