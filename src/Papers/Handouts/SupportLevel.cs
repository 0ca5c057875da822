namespace Calx.Papers.Handouts;

/// <summary>How much a student sheet helps.</summary>
public enum SupportLevel
{
    /// <summary>Each working out as an equation in words with frames for the numbers, molar masses and words given.</summary>
    Guided,

    /// <summary>Each working out by name, with space; words given.</summary>
    Standard,

    /// <summary>What is asked, and space.</summary>
    Open,
}
