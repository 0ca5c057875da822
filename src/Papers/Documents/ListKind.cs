namespace Calx.Papers.Documents;

/// <summary>What stands before the items of a list.</summary>
public enum ListKind
{
    /// <summary>A dot.</summary>
    Bullets,

    /// <summary>A number, from 1.</summary>
    Numbers,

    /// <summary>A small box to tick.</summary>
    Ticks,
}
