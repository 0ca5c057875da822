namespace Calx.Practicals.Watching;

/// <summary>What needs the teacher in a group, the most urgent first: the order of the members is the order of the tiles.</summary>
public enum AttentionKind
{
    /// <summary>Something was noted that comes before all arithmetic.</summary>
    Stop,

    /// <summary>The vessel broke: start again, join another group's data, or go on with simulated data.</summary>
    BrokenVessel,

    /// <summary>The group asked for help.</summary>
    HelpAsked,

    /// <summary>It heats though the last heating has been called.</summary>
    StillHeating,

    /// <summary>A reading that cannot be stands in its table.</summary>
    ImpossibleReading,

    /// <summary>It asked for a reading to be corrected.</summary>
    CorrectionAsked,

    /// <summary>One reading was asked about twice.</summary>
    QueriedTwice,

    /// <summary>It has weighed after a heating and waits for what to do.</summary>
    DecisionWaiting,

    /// <summary>It has been at its step longer than usual.</summary>
    WaitingLong,

    /// <summary>Nothing.</summary>
    Nothing,
}
