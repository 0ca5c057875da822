using Calx.Records;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>The school's balances in memory: every reading that is typed asks for them, and they change once a year.</summary>
public sealed class KnownBalances : IDisposable
{
    private readonly RecordStore store;
    private readonly IDisposable watch;
    private volatile LetteredBalances? known;

    public KnownBalances(RecordStore store)
    {
        this.store = store;
        // What happens in a lesson changes no balance.
        watch = store.Watch(change => known = change.Lesson is null ? null : known);
    }

    /// <summary>The balances as they are kept now.</summary>
    public async Task<LetteredBalances> Now(CancellationToken cancellation) =>
        known ?? (known = new LetteredBalances(await store.Balances(cancellation)));

    public void Dispose() => watch.Dispose();
}
