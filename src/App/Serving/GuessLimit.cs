namespace Calx.App.Serving;

/// <summary>
/// Slows down who guesses codes or passphrases: so many wrong ones in a minute from one address, and so many from all
/// together. Right ones are never counted, so a class that joins at once is not held up.
/// </summary>
/// <param name="clock">The time.</param>
/// <param name="fromOne">Wrong ones that one address has in a minute.</param>
/// <param name="fromAll">Wrong ones that all have together in a minute.</param>
public sealed class GuessLimit(TimeProvider clock, int fromOne = 10, int fromAll = 120)
{
    private static readonly TimeSpan Window = TimeSpan.FromMinutes(1);

    private readonly Lock gate = new();
    private readonly Dictionary<string, int> wrong = new(StringComparer.Ordinal);
    private DateTimeOffset began;
    private int all;

    /// <summary>Whether an address may try now.</summary>
    public bool MayTry(string address)
    {
        lock (gate)
        {
            Renew();
            return all < fromAll && wrong.GetValueOrDefault(address) < fromOne;
        }
    }

    /// <summary>Notes a wrong one.</summary>
    public void Missed(string address)
    {
        lock (gate)
        {
            Renew();
            all++;
            wrong[address] = wrong.GetValueOrDefault(address) + 1;
        }
    }

    private void Renew()
    {
        DateTimeOffset now = clock.GetUtcNow();
        if (now - began >= Window)
        {
            began = now;
            all = 0;
            wrong.Clear();
        }
    }
}
