namespace Calx.Papers.Documents;

/// <summary>How a paragraph looks.</summary>
public enum ParagraphLook
{
    /// <summary>As most of the text.</summary>
    Body,

    /// <summary>Larger: what is read first.</summary>
    Lead,

    /// <summary>Smaller: what only some readers need.</summary>
    Small,
}
