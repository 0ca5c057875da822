namespace Calx.Practicals.Watching;

/// <summary>A step that a group says it is at: it tapped 'done' at the one before.</summary>
public sealed record ToldStep
{
    /// <summary>Takes what was said.</summary>
    /// <param name="stepId">Id of the practical's step.</param>
    /// <param name="minute">When it was said, in min since the lesson began.</param>
    /// <exception cref="ArgumentException">The id is empty or the minute is not finite.</exception>
    public ToldStep(string stepId, double minute)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(stepId);
        StepId = stepId;
        Minute = Minutes.Finite(minute, nameof(minute));
    }

    /// <summary>Id of the practical's step.</summary>
    public string StepId { get; }

    /// <summary>When it was said, in min since the lesson began.</summary>
    public double Minute { get; }
}
