using System.Diagnostics;

namespace Calx.App.Live;

/// <summary>
/// Keeps questions about readings to what people can type: working one out takes the engine some milliseconds. A device that sends
/// faster than anybody types, such as one that was away and sends all that waited, has everything kept and is asked about the first few.
/// </summary>
public sealed class AskingPace
{
    /// <summary>What a group may be asked about at once: the readings of a whole practical.</summary>
    private const double AtOnce = 6;

    private const double PerSecond = 0.5;

    private readonly Lock gate = new();
    private readonly Dictionary<int, (double Left, long At)> groups = [];

    /// <summary>Whether a group may be asked now; if so, it is counted.</summary>
    public bool Take(int group)
    {
        long now = Stopwatch.GetTimestamp();
        lock (gate)
        {
            (double left, long at) = groups.GetValueOrDefault(group, (AtOnce, now));
            left = Math.Min(AtOnce, left + (PerSecond * Stopwatch.GetElapsedTime(at, now).TotalSeconds));
            bool may = left >= 1;
            groups[group] = (may ? left - 1 : left, now);
            return may;
        }
    }
}
