using Npgsql;

namespace Calx.Records.Storage;

/// <summary>Hears what other programs change. When its connection breaks it makes another, and says that everything may have
/// changed meanwhile.</summary>
internal sealed class PostgresListener : IAsyncDisposable
{
    private static readonly TimeSpan BetweenAttempts = TimeSpan.FromMilliseconds(300);

    /// <summary>A line that is cut without a word is noticed by asking this often.</summary>
    private static readonly TimeSpan BetweenProbes = TimeSpan.FromSeconds(10);

    private readonly CancellationTokenSource stop = new();
    private readonly PostgresChannel channel;
    private readonly Action<RecordChange> heard;
    private readonly Task running;

    private PostgresListener(NpgsqlConnection first, PostgresChannel channel, Action<RecordChange> heard)
    {
        (this.channel, this.heard) = (channel, heard);
        running = Task.Run(() => Run(first));
    }

    public static async Task<PostgresListener> Start(NpgsqlDataSource source, PostgresChannel channel, Action<RecordChange> heard, CancellationToken cancel) =>
        new(await Connect(source, channel.Name, cancel), channel, heard);

    public async ValueTask DisposeAsync()
    {
        await stop.CancelAsync();
        await running;
        stop.Dispose();
    }

    private static async Task<NpgsqlConnection> Connect(NpgsqlDataSource source, string channel, CancellationToken cancel)
    {
        NpgsqlConnection connection = await source.OpenConnectionAsync(cancel);
        try
        {
            await using NpgsqlCommand command = connection.CreateCommand();
            command.CommandText = $"LISTEN {channel}";
            await command.ExecuteNonQueryAsync(cancel);
            return connection;
        }
        catch
        {
            await connection.DisposeAsync();
            throw;
        }
    }

    private async Task Run(NpgsqlConnection? connection)
    {
        while (!stop.IsCancellationRequested)
        {
            try
            {
                if (connection is null)
                {
                    await Task.Delay(BetweenAttempts, stop.Token);
                    connection = await Connect(channel.Source, channel.Name, stop.Token);
                    heard(new RecordChange(null, RecordChange.Everything));
                }

                await Hear(connection);
            }
            catch (Exception e) when (e is NpgsqlException or OperationCanceledException or IOException or TimeoutException or InvalidOperationException or System.Net.Sockets.SocketException)
            {
                connection = await Dropped(connection);
            }
        }

        await Dropped(connection);
    }

    private async Task Hear(NpgsqlConnection connection)
    {
        connection.Notification += Received;
        try
        {
            while (true)
            {
                if (!await connection.WaitAsync(BetweenProbes, stop.Token))
                {
                    await using NpgsqlCommand probe = connection.CreateCommand();
                    probe.CommandText = "SELECT 1";
                    probe.CommandTimeout = 5;
                    await probe.ExecuteNonQueryAsync(stop.Token);
                }
            }
        }
        finally
        {
            connection.Notification -= Received;
        }
    }

    private void Received(object sender, NpgsqlNotificationEventArgs message)
    {
        if (channel.Read(message.Payload) is RecordChange change)
        {
            heard(change);
        }
    }

    private static async Task<NpgsqlConnection?> Dropped(NpgsqlConnection? connection)
    {
        if (connection is not null)
        {
            await connection.DisposeAsync();
        }

        return null;
    }
}
