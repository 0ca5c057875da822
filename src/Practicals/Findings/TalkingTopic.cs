namespace Calx.Practicals.Findings;

/// <summary>What a talking point is about.</summary>
public enum TalkingTopic
{
    /// <summary>What the data show.</summary>
    Shown,

    /// <summary>How strongly they show it: one group against the class.</summary>
    Strength,

    /// <summary>A bias against chance: the class beside the accepted value.</summary>
    Bias,

    /// <summary>What the data cannot show.</summary>
    Limit,

    /// <summary>An odd result, and a question that leads to what happened.</summary>
    OddResult,

    /// <summary>What would decide it next time.</summary>
    NextTime,
}
