namespace Calx.Practicals.Definition;

/// <summary>The signal word of the Globally Harmonized System.</summary>
public enum GhsSignal
{
    /// <summary>None.</summary>
    None,

    /// <summary>The lesser one.</summary>
    Warning,

    /// <summary>The greater one.</summary>
    Danger,
}
