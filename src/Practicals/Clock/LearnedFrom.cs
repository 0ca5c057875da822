namespace Calx.Practicals.Clock;

/// <summary>From where a plan's learned numbers are: past lessons, and a teacher who accepted them.</summary>
public sealed record LearnedFrom
{
    /// <summary>Takes what is known of it.</summary>
    /// <param name="lessons">How many lessons they rest on, from 0.</param>
    /// <param name="acceptedOn">When the last of them was accepted, for people.</param>
    /// <param name="className">The class whose numbers are among them; empty where all are the school's.</param>
    /// <param name="times">Ids of the steps whose times were learned.</param>
    /// <param name="shares">How many shares were learned: of faults, and of pieces that break.</param>
    public LearnedFrom(int lessons, string acceptedOn, string className, IReadOnlyCollection<string> times, int shares)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(lessons);
        ArgumentException.ThrowIfNullOrWhiteSpace(acceptedOn);
        ArgumentNullException.ThrowIfNull(className);
        ArgumentNullException.ThrowIfNull(times);
        ArgumentOutOfRangeException.ThrowIfNegative(shares);
        (Lessons, AcceptedOn, ClassName, Times, Shares) = (lessons, acceptedOn, className, times, shares);
    }

    /// <summary>How many lessons they rest on.</summary>
    public int Lessons { get; }

    /// <summary>When the last of them was accepted, for people.</summary>
    public string AcceptedOn { get; }

    /// <summary>The class whose numbers are among them, or empty.</summary>
    public string ClassName { get; }

    /// <summary>Ids of the steps whose times were learned.</summary>
    public IReadOnlyCollection<string> Times { get; }

    /// <summary>How many shares were learned.</summary>
    public int Shares { get; }
}
