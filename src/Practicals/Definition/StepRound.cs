namespace Calx.Practicals.Definition;

/// <summary>Which heatings a step belongs to.</summary>
public enum StepRound
{
    /// <summary>None: it is no part of a heating.</summary>
    None,

    /// <summary>The first heating only.</summary>
    First,

    /// <summary>Every heating after the first.</summary>
    Again,

    /// <summary>Every heating.</summary>
    Each,
}
