using System.Diagnostics;
using Calx.Rehearsal;

namespace Calx.Bench.Serving;

/// <summary>A device that does what the page on it does: it hears the lesson's stream, fetches the page anew when it is told to, and
/// now and then sends a reading.</summary>
/// <param name="client">Its client.</param>
/// <param name="stream">Address of its stream.</param>
/// <param name="page">Address of the page that it shows.</param>
internal sealed class Device(HttpClient client, string stream, string page)
{
    /// <summary>How many times the page was fetched anew.</summary>
    public int Fetched { get; private set; }

    /// <summary>Hears and fetches until it is told to stop.</summary>
    public async Task Hear(CancellationToken stop)
    {
        try
        {
            using HttpResponseMessage answer = await client.GetAsync(new Uri(stream, UriKind.Relative), HttpCompletionOption.ResponseHeadersRead, stop);
            using var lines = new StreamReader(await answer.Content.ReadAsStreamAsync(stop));
            while (await lines.ReadLineAsync(stop) is string line)
            {
                if (line.StartsWith("event: changed", StringComparison.Ordinal))
                {
                    await client.GetByteArrayAsync(new Uri(page, UriKind.Relative), stop);
                    Fetched++;
                }
            }
        }
        catch (OperationCanceledException)
        {
            // Told to stop.
        }
    }

    /// <summary>Sends a reading after about every so many seconds until it is told to stop.</summary>
    public static async Task Type(Phone phone, double everySeconds, Random random, Latencies latencies, CancellationToken stop)
    {
        try
        {
            await Task.Delay(TimeSpan.FromSeconds(random.NextDouble() * everySeconds), stop);
            while (!stop.IsCancellationRequested)
            {
                long began = Stopwatch.GetTimestamp();
                await phone.Send(TypedEntry.Drawn(random));
                latencies.Add(Stopwatch.GetElapsedTime(began));
                await Task.Delay(TimeSpan.FromSeconds(everySeconds * (0.8 + (0.4 * random.NextDouble()))), stop);
            }
        }
        catch (OperationCanceledException)
        {
            // Told to stop.
        }
    }
}
