using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>What is known of one group when the rest of its lesson is drawn.</summary>
internal sealed class KnownGroup
{
    /// <summary>Takes it.</summary>
    /// <param name="group">The group.</param>
    /// <param name="at">Where it stands.</param>
    /// <param name="chain">What it does up to the next thing heard.</param>
    /// <param name="trial">Its trial's route.</param>
    public KnownGroup(GroupAtWork group, GroupStanding at, GroupChain chain, TrialRoute trial)
    {
        Group = group;
        At = at;
        Chain = chain;
        Trial = trial;
        Together = trial.Find(0, p => p.Part == RoutePart.After && p.Step.Together);
        int from = chain.From;
        bool heats = from >= 0 && from < trial.Places.Count && trial.Places[from].Part == RoutePart.Heating;
        LeastRounds = heats ? trial.Places[from].Round + 1 : Math.Max(1, at.Weighed);
    }

    /// <summary>The group.</summary>
    public GroupAtWork Group { get; }

    /// <summary>Where it stands.</summary>
    public GroupStanding At { get; }

    /// <summary>What it does up to the next thing heard.</summary>
    public GroupChain Chain { get; }

    /// <summary>Its trial's route.</summary>
    public TrialRoute Trial { get; }

    /// <summary>Where it meets the class at the end; -1 where it does not.</summary>
    public int Together { get; }

    /// <summary>Heatings that its trial has at least.</summary>
    public int LeastRounds { get; }

    /// <summary>Whether it takes part at all.</summary>
    public bool IsAway => Group.Condition is GroupCondition.Away;

    /// <summary>Whether it is done with its own work.</summary>
    public bool IsFinished => Group.Condition is GroupCondition.Finished;

    /// <summary>Whether the class is still together, as far as was heard.</summary>
    public bool IsTogether => At.Place < 0;
}
