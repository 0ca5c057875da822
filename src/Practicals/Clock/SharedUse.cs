namespace Calx.Practicals.Clock;

/// <summary>How one shared thing was used in a run; counted while it runs.</summary>
internal sealed class SharedUse(int units)
{
    private double since;

    /// <summary>How many there are.</summary>
    public int Units { get; } = units;

    /// <summary>How many are free.</summary>
    public int Free { get; private set; } = units;

    /// <summary>How many are waiting for it.</summary>
    public int Waiting { get; private set; }

    /// <summary>How often it was taken.</summary>
    public int Visits { get; private set; }

    /// <summary>Minutes waited by all who took it, added up when each begins.</summary>
    public double WaitedMinutes { get; private set; }

    /// <summary>The longest wait.</summary>
    public double LongestWait { get; private set; }

    /// <summary>Unit minutes in use, added up when each begins.</summary>
    public double BusyMinutes { get; private set; }

    /// <summary>Number waiting times minutes, added up whenever the number changes: by Little's law the same as the minutes
    /// waited, reckoned another way.</summary>
    public double QueueMinutes { get; private set; }

    /// <summary>Most units in use at once.</summary>
    public int MostInUse { get; private set; }

    /// <summary>Ready for another run.</summary>
    public void Clear()
    {
        (Free, Waiting, Visits, MostInUse) = (Units, 0, 0, 0);
        (WaitedMinutes, LongestWait, BusyMinutes, QueueMinutes, since) = (0, 0, 0, 0, 0);
    }

    /// <summary>Somebody begins to wait.</summary>
    public void Queue(double minute)
    {
        Count(minute);
        Waiting++;
    }

    /// <summary>Somebody takes units.</summary>
    public void Take(int units, double minute, double waited, bool wasQueued, double minutes)
    {
        if (wasQueued)
        {
            Count(minute);
            Waiting--;
        }

        Free -= units;
        Visits++;
        WaitedMinutes += waited;
        LongestWait = Math.Max(LongestWait, waited);
        BusyMinutes += units * minutes;
        MostInUse = Math.Max(MostInUse, Units - Free);
    }

    /// <summary>Somebody goes on holding units for longer.</summary>
    public void Keep(int units, double minutes) => BusyMinutes += units * minutes;

    /// <summary>Somebody gives units back.</summary>
    public void GiveBack(int units) => Free += units;

    private void Count(double minute)
    {
        QueueMinutes += Waiting * (minute - since);
        since = minute;
    }
}
