using Calx.Measurement.Weighing;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Watching;

/// <summary>What is known of a group while the lesson runs. Never changes: whoever keeps the lesson makes a new one when something
/// is known anew.</summary>
public sealed class GroupAtWork
{
    /// <summary>Takes what is known.</summary>
    /// <param name="number">The group's number, from 1.</param>
    /// <param name="trial">The trial that it is at, from 1.</param>
    /// <param name="balance">The balance that it uses, or is given.</param>
    /// <param name="readings">The readings of that trial with its observations; null where there is nothing yet.</param>
    /// <param name="moments">When things happened; null where nothing has.</param>
    /// <param name="condition">What it is doing at all; null for at work.</param>
    /// <param name="calls">What nobody has seen to yet; null for nothing.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is below 1.</exception>
    public GroupAtWork(
        int number,
        int trial,
        Balance balance,
        GroupReadings? readings = null,
        GroupMoments? moments = null,
        GroupCondition? condition = null,
        GroupCalls? calls = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(trial, 1);
        ArgumentNullException.ThrowIfNull(balance);
        (Number, Trial, Balance) = (number, trial, balance);
        Readings = readings ?? new GroupReadings(FormattableString.Invariant($"G{number}"), null, []);
        Moments = moments ?? GroupMoments.None;
        Condition = condition ?? new GroupCondition.AtWork();
        Calls = calls ?? GroupCalls.None;
    }

    /// <summary>The group's number, from 1.</summary>
    public int Number { get; }

    /// <summary>The trial that it is at, from 1.</summary>
    public int Trial { get; }

    /// <summary>The balance that it uses.</summary>
    public Balance Balance { get; }

    /// <summary>The readings of the trial; what was seen stands in its remarks, by id or in words.</summary>
    public GroupReadings Readings { get; }

    /// <summary>When things happened.</summary>
    public GroupMoments Moments { get; }

    /// <summary>What it is doing at all.</summary>
    public GroupCondition Condition { get; }

    /// <summary>What nobody has seen to yet.</summary>
    public GroupCalls Calls { get; }
}
