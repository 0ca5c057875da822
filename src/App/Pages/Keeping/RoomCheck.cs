namespace Calx.App.Pages.Keeping;

/// <summary>Which devices have reached this program from the room, lately.</summary>
public sealed class RoomCheck(TimeProvider clock)
{
    private const int Most = 20;

    private readonly Lock gate = new();
    private readonly LinkedList<Reached> last = new();
    private TaskCompletionSource changed = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>The last ones, the latest first, one a device and address.</summary>
    public IReadOnlyList<Reached> Last
    {
        get
        {
            lock (gate)
            {
                return [.. last];
            }
        }
    }

    /// <summary>A device got through.</summary>
    /// <param name="from">The device's address.</param>
    /// <param name="host">The address by which it reached this program.</param>
    public void Tell(string from, string host)
    {
        TaskCompletionSource told;
        lock (gate)
        {
            Reached? before = last.FirstOrDefault(r => r.From == from && r.Host == host);
            if (before is not null)
            {
                last.Remove(before);
            }

            last.AddFirst(new Reached(from, host, clock.GetUtcNow()));
            if (last.Count > Most)
            {
                last.RemoveLast();
            }

            told = changed;
            changed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        }

        told.TrySetResult();
    }

    /// <summary>Ends when the next device gets through.</summary>
    public Task Change()
    {
        lock (gate)
        {
            return changed.Task;
        }
    }
}
