namespace Calx.App.Serving;

/// <summary>The names that the program goes by. Asking the machine for its networks takes longer than a request, and they change
/// when somebody plugs in a cable: so they are asked for every few seconds.</summary>
public sealed class OwnHosts(ServeOptions options, TimeProvider clock)
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    private volatile Asked? last;

    /// <summary>The names now.</summary>
    public IReadOnlyCollection<string> Now()
    {
        DateTimeOffset now = clock.GetUtcNow();
        if (last is not Asked known || now - known.At > Longest)
        {
            last = known = new Asked(RoomAddresses.All(options.OpenToRoom), now);
        }

        return known.Names;
    }

    private sealed record Asked(IReadOnlyCollection<string> Names, DateTimeOffset At);
}
