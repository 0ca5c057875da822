namespace Calx.Papers.Documents;

/// <summary>How a table looks.</summary>
public enum TableRuling
{
    /// <summary>A line under each row: to read.</summary>
    Ruled,

    /// <summary>Every cell in a frame: to write in.</summary>
    Framed,
}
