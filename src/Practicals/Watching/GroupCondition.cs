namespace Calx.Practicals.Watching;

/// <summary>What a group is doing in the lesson at all. A closed set.</summary>
public abstract record GroupCondition
{
    private GroupCondition()
    {
    }

    /// <summary>It works with its own sample.</summary>
    public sealed record AtWork : GroupCondition;

    /// <summary>It lost its sample and has begun anew with another vessel; its readings are those of the new start.</summary>
    public sealed record StartedAgain : GroupCondition;

    /// <summary>It lost its sample and goes on with another group's readings.</summary>
    public sealed record Joined : GroupCondition
    {
        /// <summary>Takes the other group.</summary>
        /// <param name="group">Its number, from 1.</param>
        /// <exception cref="ArgumentOutOfRangeException">The number is below 1.</exception>
        public Joined(int group)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(group, 1);
            Group = group;
        }

        /// <summary>Number of the group whose readings it uses.</summary>
        public int Group { get; }
    }

    /// <summary>It lost its sample and goes on with simulated readings, labelled as such.</summary>
    public sealed record Simulated : GroupCondition;

    /// <summary>It is done with everything.</summary>
    public sealed record Finished : GroupCondition;

    /// <summary>It is not there.</summary>
    public sealed record Away : GroupCondition;

    /// <summary>Whether it takes readings of its own.</summary>
    public bool Weighs => this is AtWork or StartedAgain;
}
