namespace Calx.Papers.Documents;

/// <summary>How a paragraph looks.</summary>
public enum ParagraphLook
{
    /// <summary>As most of the text.</summary>
    Body,

    /// <summary>Larger: what is read first.</summary>
    Lead,

    /// <summary>Much larger: the one number of a sheet for a wall.</summary>
    Huge,

    /// <summary>Smaller: what only some readers need.</summary>
    Small,

    /// <summary>Twice as large: the one thing to do on a page.</summary>
    Step,

    /// <summary>As most of the text, and on the same side as what follows: what is given for it.</summary>
    Given,
}
