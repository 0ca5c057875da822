namespace Calx.Practicals.Learning;

/// <summary>Whether a group may have stood in a queue before a reading: another group had read the same balance a moment before.</summary>
internal sealed class HeardQueue(IReadOnlyList<HeardTrial> trials)
{
    private readonly (int Group, double Minute, string? Balance)[] readings =
    [
        .. trials.SelectMany(t => t.Marks.OfType<HeardMark.Read>().Select(r => (t.Group, r.Minute, r.Balance))),
    ];

    /// <summary>Whether it may have waited. Where a balance was not named it may have been any.</summary>
    /// <param name="read">The reading.</param>
    /// <param name="group">The group that took it.</param>
    /// <param name="longest">The longest time in min that a weighing takes.</param>
    public bool MayHaveWaited(HeardMark.Read read, int group, double longest) => readings.Any(other =>
        other.Group != group && other.Minute < read.Minute && other.Minute > read.Minute - longest
        && (other.Balance is null || read.Balance is null || string.Equals(other.Balance, read.Balance, StringComparison.OrdinalIgnoreCase)));
}
