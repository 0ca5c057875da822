namespace Calx.Practicals.Watching;

/// <summary>Where a trial stands with its heating.</summary>
public enum HeatState
{
    /// <summary>Nothing is heated in this lesson.</summary>
    None,

    /// <summary>It has not begun.</summary>
    NotBegun,

    /// <summary>A flame burns, as far as is known.</summary>
    Burning,

    /// <summary>It has been heated and the flame is out.</summary>
    Out,
}
