namespace Calx.Papers.Documents;

/// <summary>How a part of a line stands out.</summary>
public enum PhraseLook
{
    /// <summary>It does not.</summary>
    Plain,

    /// <summary>In bold.</summary>
    Bold,

    /// <summary>In italics.</summary>
    Italic,
}
