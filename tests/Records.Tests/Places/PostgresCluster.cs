using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Calx.Records.Tests.Places;
using Npgsql;

[assembly: AssemblyFixture(typeof(PostgresCluster))]

namespace Calx.Records.Tests.Places;

/// <summary>A PostgreSQL server of the tests' own, in a folder of its own, begun when a test first asks for it and stopped at the
/// end. Where its programs are not installed, the tests that need it are skipped and say so.</summary>
public sealed class PostgresCluster : IAsyncLifetime
{
    /// <summary>The server will not run as root.</summary>
    private const string ServerUser = "postgres";

    private readonly Lazy<Task<string>> started;
    private readonly string? programs = Programs();
    private readonly string folder = Directory.CreateTempSubdirectory("calx-postgres-").FullName;
    private readonly int port = FreePort();
    private bool isRunning;

    public PostgresCluster() => started = new Lazy<Task<string>>(Start);

    /// <summary>A connection to a new, empty schema.</summary>
    public async Task<string> FreshSchema()
    {
        Assert.SkipWhen(programs is null, "PostgreSQL's server programs (initdb, pg_ctl) are not installed.");
        string server = await started.Value;
        string schema = "t" + Guid.NewGuid().ToString("N");
        await using NpgsqlDataSource source = NpgsqlDataSource.Create(server);
        await using NpgsqlCommand command = source.CreateCommand($"CREATE SCHEMA {schema}");
        await command.ExecuteNonQueryAsync(TestContext.Current.CancellationToken);
        return $"{server};Search Path={schema}";
    }

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public async ValueTask DisposeAsync()
    {
        if (isRunning)
        {
            NpgsqlConnection.ClearAllPools();
            await Control("-m", "immediate", "stop");
        }

        Directory.Delete(folder, recursive: true);
    }

    private static string? Programs() => Directory.Exists("/usr/lib/postgresql")
        ? Directory.GetDirectories("/usr/lib/postgresql")
            .Select(d => Path.Combine(d, "bin"))
            .Where(d => File.Exists(Path.Combine(d, "initdb")) && File.Exists(Path.Combine(d, "pg_ctl")))
            .OrderByDescending(d => int.TryParse(Path.GetFileName(Path.GetDirectoryName(d)), CultureInfo.InvariantCulture, out int version) ? version : 0)
            .FirstOrDefault()
        : Environment.GetEnvironmentVariable("PATH")?.Split(Path.PathSeparator).FirstOrDefault(d => File.Exists(Path.Combine(d, "initdb")) && File.Exists(Path.Combine(d, "pg_ctl")));

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private async Task<string> Start()
    {
        if (Environment.IsPrivilegedProcess)
        {
            await Run("chown", ServerUser, folder);
        }

        await AsServer("initdb", "-D", Path.Combine(folder, "cluster"), "-A", "trust", "-U", "calx", "--encoding=UTF8", "--locale=C.UTF-8", "--no-sync");
        await Control("-o", FormattableString.Invariant($"-p {port} -k {folder} -h 127.0.0.1"), "start");
        isRunning = true;
        return FormattableString.Invariant($"Host=127.0.0.1;Port={port};Username=calx;Database=postgres");
    }

    private Task Control(params string[] words) => AsServer("pg_ctl", ["-D", Path.Combine(folder, "cluster"), "-w", "-l", Path.Combine(folder, "log"), .. words]);

    private Task AsServer(string program, params string[] words)
    {
        string path = Path.Combine(programs!, program);
        return Environment.IsPrivilegedProcess ? Run("runuser", ["-u", ServerUser, "--", path, .. words]) : Run(path, words);
    }

    private async Task Run(string program, params string[] words)
    {
        // Output goes to nowhere: the server would inherit a pipe and hold it open for as long as it runs.
        var start = new ProcessStartInfo("sh") { WorkingDirectory = folder };
        foreach (string word in (string[])["-c", "exec \"$0\" \"$@\" > /dev/null 2>&1", program, .. words])
        {
            start.ArgumentList.Add(word);
        }

        using Process process = Process.Start(start)!;
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, $"{program} {string.Join(' ', words)} ended with {process.ExitCode}.");
    }
}
