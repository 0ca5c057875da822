using System.Collections.Concurrent;
using Calx.Rehearsal;

namespace Calx.App.Tests.Proofs;

/// <summary>A phone that types on and on, and sends what was not acknowledged again, as the students' page does.</summary>
internal sealed class Sender(Phone phone, int seed) : IDisposable
{
    private readonly Random random = new(seed);
    private readonly ConcurrentDictionary<string, TypedEntry> acknowledged = new();
    private TypedEntry[] pending = [];

    /// <summary>What the program has said that it has, by id.</summary>
    public IReadOnlyDictionary<string, TypedEntry> Acknowledged => acknowledged;

    /// <summary>What the program said of an entry other than that it has it.</summary>
    public ConcurrentQueue<string> Refusals { get; } = new();

    /// <summary>Types and sends until it is told to stop; then sends what is left until all is acknowledged.</summary>
    public async Task Run(CancellationToken stop)
    {
        while (!stop.IsCancellationRequested || pending.Length > 0)
        {
            if (pending.Length == 0)
            {
                pending = [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => TypedEntry.Drawn(random))];
            }

            try
            {
                foreach ((string id, string result) in await phone.Send(pending))
                {
                    Take(id, result);
                }

                pending = [];
                await Task.Delay(random.Next(5, 30), CancellationToken.None);
            }
            catch (Exception gone) when (gone is HttpRequestException or TaskCanceledException or IOException)
            {
                await Task.Delay(random.Next(20, 60), CancellationToken.None);
            }
        }
    }

    public void Dispose() => phone.Dispose();

    private void Take(string id, string result)
    {
        if (result is "added" or "known")
        {
            acknowledged[id] = pending.Single(e => e.Id == id);
        }
        else
        {
            Refusals.Enqueue($"{id}: {result}");
        }
    }
}
