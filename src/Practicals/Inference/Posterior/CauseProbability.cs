namespace Calx.Practicals.Inference.Posterior;

/// <summary>How probable a cause is for one group, given its readings and what was seen.</summary>
public sealed class CauseProbability
{
    /// <summary>Takes a cause with its probabilities.</summary>
    /// <param name="cause">Its id, of <see cref="Definition.Causes"/>.</param>
    /// <param name="label">What happened, for people; a clause without a full stop.</param>
    /// <param name="probability">0 to 1; over all causes of a group, 'as-expected' among them, these add up to 1. The
    /// probability that two causes are at work is shared equally between the two.</param>
    /// <param name="present">Probability that the cause is at work, alone or with another, 0 to 1.</param>
    /// <param name="reading">Id of the weighing that it most probably befell, or null where it befell none alone.</param>
    /// <param name="detail">Its size, for the teacher, given that it is at work: 'about 21 mg lost (8 to 40 mg)'; null where
    /// there is nothing to size.</param>
    /// <param name="probableDigits">What the balance most probably showed where a reading was misread, else null. For the
    /// teacher only.</param>
    /// <exception cref="ArgumentException">The cause or its label is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A probability is not within 0 to 1.</exception>
    public CauseProbability(
        string cause,
        string label,
        double probability,
        double present,
        string? reading = null,
        string? detail = null,
        string? probableDigits = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(cause);
        ArgumentException.ThrowIfNullOrWhiteSpace(label);
        Cause = cause;
        Label = label;
        Probability = Share(probability, nameof(probability));
        Present = Share(present, nameof(present));
        Reading = reading;
        Detail = detail;
        ProbableDigits = probableDigits;
    }

    /// <summary>Its id.</summary>
    public string Cause { get; }

    /// <summary>What happened, for people; a clause without a full stop.</summary>
    public string Label { get; }

    /// <summary>Its share of 1 over all causes of the group, pairs shared equally.</summary>
    public double Probability { get; }

    /// <summary>Probability that it is at work, alone or with another.</summary>
    public double Present { get; }

    /// <summary>Id of the weighing that it most probably befell, or null.</summary>
    public string? Reading { get; }

    /// <summary>Its size, for the teacher, or null.</summary>
    public string? Detail { get; }

    /// <summary>What the balance most probably showed, for the teacher only; or null.</summary>
    public string? ProbableDigits { get; }

    private static double Share(double value, string name) => value is >= 0 and <= 1
        ? value
        : throw new ArgumentOutOfRangeException(name, value, "A probability is between 0 and 1.");
}
