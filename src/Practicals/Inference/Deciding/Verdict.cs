namespace Calx.Practicals.Inference.Deciding;

/// <summary>What a group at the balance is to do now.</summary>
public enum Verdict
{
    /// <summary>Heat once more, cool and weigh.</summary>
    Reheat,

    /// <summary>Stop here: more heating is not worth its minutes.</summary>
    ConstantMass,

    /// <summary>Let it cool and weigh it again.</summary>
    CoolAndReweigh,

    /// <summary>Look at a reading again before anything is worked out from it.</summary>
    CheckReading,

    /// <summary>The balance is too coarse for the change that is due.</summary>
    CannotTell,

    /// <summary>Something happened that comes before all arithmetic.</summary>
    StopTellYourTeacher,
}
