namespace Calx.Practicals.Clock;

/// <summary>What somebody does next. Made by the three members below.</summary>
internal readonly record struct Activity
{
    private Activity(ActivityKind kind, double minutes, int need, int tag)
    {
        Kind = kind;
        Minutes = minutes;
        Need = need;
        Tag = tag;
    }

    /// <summary>That it is over for this person.</summary>
    public static Activity Done => new(ActivityKind.Done, 0, -1, -1);

    /// <summary>Work, once what it needs is free.</summary>
    /// <param name="minutes">How long, from 0.</param>
    /// <param name="need">Which of the simulation's needs; -1 for none.</param>
    /// <param name="tag">What the trace calls it.</param>
    public static Activity Work(double minutes, int need = -1, int tag = -1) => new(ActivityKind.Work, minutes, need, tag);

    /// <summary>Waiting until everybody who is not done has come, then the same thing together.</summary>
    /// <param name="minutes">How long it takes once all are there.</param>
    /// <param name="tag">What the trace calls it.</param>
    public static Activity Together(double minutes, int tag = -1) => new(ActivityKind.Together, minutes, -1, tag);

    /// <summary>Which of the three.</summary>
    public ActivityKind Kind { get; }

    /// <summary>How long it takes.</summary>
    public double Minutes { get; }

    /// <summary>Which need, or -1.</summary>
    public int Need { get; }

    /// <summary>What the trace calls it.</summary>
    public int Tag { get; }
}
