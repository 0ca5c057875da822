namespace Calx.Practicals.Learning;

/// <summary>What was heard of one group in one of its trials.</summary>
public sealed class HeardTrial
{
    /// <summary>Takes what was heard.</summary>
    /// <param name="group">The group's number.</param>
    /// <param name="isFirst">Whether it is the group's first trial, before which it sets up.</param>
    /// <param name="endedAt">The minute at which the lesson ended while the group was at work in this trial; null where it had finished
    /// or gone on to another.</param>
    /// <param name="marks">What was heard, in any order.</param>
    public HeardTrial(int group, bool isFirst, double? endedAt, IReadOnlyList<HeardMark> marks)
    {
        ArgumentNullException.ThrowIfNull(marks);
        (Group, IsFirst, EndedAt, Marks) = (group, isFirst, endedAt, [.. marks.OrderBy(m => m.Minute)]);
    }

    /// <summary>The group's number.</summary>
    public int Group { get; }

    /// <summary>Whether it is the group's first trial.</summary>
    public bool IsFirst { get; }

    /// <summary>The minute at which the lesson ended while it was at work, or null.</summary>
    public double? EndedAt { get; }

    /// <summary>What was heard, in the order of the minutes.</summary>
    public IReadOnlyList<HeardMark> Marks { get; }
}
