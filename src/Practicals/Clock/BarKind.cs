namespace Calx.Practicals.Clock;

/// <summary>What a bar of a lesson's timeline shows.</summary>
public enum BarKind
{
    /// <summary>Work that needs nothing scarce.</summary>
    Work,

    /// <summary>A weighing.</summary>
    Weighing,

    /// <summary>A flame burns.</summary>
    Flame,

    /// <summary>A heated vessel is left to cool.</summary>
    Cooling,

    /// <summary>The whole class together.</summary>
    Class,

    /// <summary>Nothing can be done: something is not free, or somebody not there.</summary>
    Waiting,
}
