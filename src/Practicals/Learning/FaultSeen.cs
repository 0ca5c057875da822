namespace Calx.Practicals.Learning;

/// <summary>In how many groups of a lesson a fault was found.</summary>
public sealed class FaultSeen
{
    /// <summary>Takes a count.</summary>
    /// <param name="cause">The fault's cause.</param>
    /// <param name="groups">In how many groups it was looked for, from 0.</param>
    /// <param name="expected">The sum of the probabilities that it was present, from 0 to <paramref name="groups"/>: findings are
    /// seldom certain.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public FaultSeen(string cause, int groups, double expected)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(cause);
        ArgumentOutOfRangeException.ThrowIfNegative(groups);
        ArgumentOutOfRangeException.ThrowIfNotEqual(expected >= 0 && expected <= groups, true, nameof(expected));
        (Cause, Groups, Expected) = (cause, groups, expected);
    }

    /// <summary>The fault's cause.</summary>
    public string Cause { get; }

    /// <summary>In how many groups it was looked for.</summary>
    public int Groups { get; }

    /// <summary>Expected number of groups that had it.</summary>
    public double Expected { get; }
}
