namespace Calx.Practicals.Watching;

/// <summary>When things happened to a group, as far as they are known, in min since the lesson began.</summary>
public sealed class GroupMoments
{
    /// <summary>Takes the minutes.</summary>
    /// <param name="readAt">When each reading was received, by the id of the weighing; may be empty.</param>
    /// <param name="flameLit">When the group last began to heat, or null where it did not say.</param>
    /// <param name="flameOut">When its flame was last put out, or null.</param>
    /// <param name="told">The step that it last said it was at, or null.</param>
    /// <param name="decided">What it last decided, or null.</param>
    /// <exception cref="ArgumentException">A minute is not finite.</exception>
    public GroupMoments(
        IReadOnlyDictionary<string, double>? readAt = null,
        double? flameLit = null,
        double? flameOut = null,
        ToldStep? told = null,
        OwnDecision? decided = null)
    {
        ReadAt = readAt ?? new Dictionary<string, double>();
        foreach (double minute in ReadAt.Values)
        {
            Minutes.Finite(minute, nameof(readAt));
        }

        FlameLit = Minutes.Finite(flameLit, nameof(flameLit));
        FlameOut = Minutes.Finite(flameOut, nameof(flameOut));
        Told = told;
        Decided = decided;
    }

    /// <summary>Nothing has happened yet.</summary>
    public static GroupMoments None { get; } = new();

    /// <summary>When each reading was received, by the id of the weighing.</summary>
    public IReadOnlyDictionary<string, double> ReadAt { get; }

    /// <summary>When the group last began to heat, or null.</summary>
    public double? FlameLit { get; }

    /// <summary>When its flame was last put out, or null.</summary>
    public double? FlameOut { get; }

    /// <summary>The step that it last said it was at, or null.</summary>
    public ToldStep? Told { get; }

    /// <summary>What it last decided, or null.</summary>
    public OwnDecision? Decided { get; }
}
