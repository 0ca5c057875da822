namespace Calx.Practicals.Watching;

/// <summary>What a group has asked for, or what happened to it, that nobody has seen to yet; minutes since the lesson began.</summary>
public sealed class GroupCalls
{
    /// <summary>Takes the calls; null where there is none.</summary>
    /// <param name="help">When it asked for help.</param>
    /// <param name="correction">When it asked for a reading to be corrected.</param>
    /// <param name="broken">When its vessel broke.</param>
    /// <param name="queries">How often the reading that stands now was asked about, from 0.</param>
    /// <exception cref="ArgumentException">A minute is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public GroupCalls(double? help = null, double? correction = null, double? broken = null, int queries = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(queries);
        Help = Minutes.Finite(help, nameof(help));
        Correction = Minutes.Finite(correction, nameof(correction));
        Broken = Minutes.Finite(broken, nameof(broken));
        Queries = queries;
    }

    /// <summary>None.</summary>
    public static GroupCalls None { get; } = new();

    /// <summary>When it asked for help, or null.</summary>
    public double? Help { get; }

    /// <summary>When it asked for a reading to be corrected, or null.</summary>
    public double? Correction { get; }

    /// <summary>When its vessel broke, or null.</summary>
    public double? Broken { get; }

    /// <summary>How often the reading that stands now was asked about.</summary>
    public int Queries { get; }
}
