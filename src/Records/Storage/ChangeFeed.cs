using System.Collections.Immutable;
using System.Threading.Channels;

namespace Calx.Records.Storage;

/// <summary>Tells those who watch what was changed, in order, on a task of its own: a slow watcher holds up no writer, and one that
/// throws spoils nothing for the others.</summary>
internal sealed class ChangeFeed : IAsyncDisposable
{
    private readonly Channel<RecordChange> waiting = Channel.CreateUnbounded<RecordChange>(new UnboundedChannelOptions { SingleReader = true });
    private readonly Task running;
    private ImmutableList<Subscription> watching = [];

    public ChangeFeed() => running = Task.Run(Run);

    public IDisposable Watch(Action<RecordChange> changed)
    {
        var subscription = new Subscription(this, changed);
        ImmutableInterlocked.Update(ref watching, (all, one) => all.Add(one), subscription);
        return subscription;
    }

    public void Publish(IEnumerable<RecordChange> changes)
    {
        foreach (RecordChange change in changes)
        {
            Publish(change);
        }
    }

    public void Publish(RecordChange change) => waiting.Writer.TryWrite(change);

    public async ValueTask DisposeAsync()
    {
        waiting.Writer.TryComplete();
        await running;
    }

    private async Task Run()
    {
        await foreach (RecordChange change in waiting.Reader.ReadAllAsync())
        {
            foreach (Subscription one in watching)
            {
                one.Tell(change);
            }
        }
    }

    private sealed class Subscription(ChangeFeed feed, Action<RecordChange> changed) : IDisposable
    {
        public void Dispose() => ImmutableInterlocked.Update(ref feed.watching, (all, one) => all.Remove(one), this);

        public void Tell(RecordChange change)
        {
            try
            {
                changed(change);
            }
#pragma warning disable CA1031 // A watcher's own fault is not the records': the entry is kept, and the others are told.
            catch (Exception)
#pragma warning restore CA1031
            {
            }
        }
    }
}
