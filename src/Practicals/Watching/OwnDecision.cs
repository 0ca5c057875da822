namespace Calx.Practicals.Watching;

/// <summary>What a group decided for itself after a weighing: to heat again or to stop.</summary>
public sealed record OwnDecision
{
    /// <summary>Takes the decision.</summary>
    /// <param name="weighingId">Id of the weighing after which it was taken, such as <c>after2</c>; another weighing later makes it void.</param>
    /// <param name="heatsAgain">Whether it heats again.</param>
    /// <param name="minute">When, in min since the lesson began.</param>
    /// <exception cref="ArgumentException">The id is empty or the minute is not finite.</exception>
    public OwnDecision(string weighingId, bool heatsAgain, double minute)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(weighingId);
        WeighingId = weighingId;
        HeatsAgain = heatsAgain;
        Minute = Minutes.Finite(minute, nameof(minute));
    }

    /// <summary>Id of the weighing after which it was taken.</summary>
    public string WeighingId { get; }

    /// <summary>Whether it heats again.</summary>
    public bool HeatsAgain { get; }

    /// <summary>When, in min since the lesson began.</summary>
    public double Minute { get; }
}
