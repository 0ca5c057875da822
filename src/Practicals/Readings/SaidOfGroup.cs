namespace Calx.Practicals.Readings;

/// <summary>The columns of a class file that are no mass.</summary>
public enum SaidOfGroup
{
    /// <summary>The group's name or number.</summary>
    Group,

    /// <summary>The trial or run of the group.</summary>
    Trial,

    /// <summary>The arm of the practical.</summary>
    Arm,

    /// <summary>When, or for how long.</summary>
    Time,

    /// <summary>What was seen.</summary>
    Observations,

    /// <summary>The balance used.</summary>
    Balance,
}
