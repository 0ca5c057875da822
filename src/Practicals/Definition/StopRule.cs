namespace Calx.Practicals.Definition;

/// <summary>When a repetition ends before its most rounds.</summary>
public enum StopRule
{
    /// <summary>When the last two weighings agree within the practical's tolerance.</summary>
    ConstantMass,

    /// <summary>Never: all rounds are done.</summary>
    AllRounds,
}
