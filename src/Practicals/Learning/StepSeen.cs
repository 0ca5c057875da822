namespace Calx.Practicals.Learning;

/// <summary>How long one group took for a step, once: a step that was done again comes again. Where a step grows with the sample, as
/// with the usual sample.</summary>
public sealed class StepSeen
{
    /// <summary>Takes a time.</summary>
    /// <param name="step">Id of the step in the practical.</param>
    /// <param name="minutes">Time in min, above 0 and finite.</param>
    /// <param name="isAtLeast">Whether the group had not finished by then: the bell rang.</param>
    /// <exception cref="ArgumentOutOfRangeException">The time is not above 0, or not finite.</exception>
    public StepSeen(string step, double minutes, bool isAtLeast = false)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(step);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(minutes);
        ArgumentOutOfRangeException.ThrowIfNotEqual(double.IsFinite(minutes), true, nameof(minutes));
        (Step, Minutes, IsAtLeast) = (step, minutes, isAtLeast);
    }

    /// <summary>Id of the step.</summary>
    public string Step { get; }

    /// <summary>Time in min.</summary>
    public double Minutes { get; }

    /// <summary>Whether the step would have taken longer.</summary>
    public bool IsAtLeast { get; }
}
