namespace Calx.Papers.Tables;

/// <summary>Why no table could be read from a file.</summary>
public enum TableFaultKind
{
    /// <summary>There is no such file.</summary>
    NotFound,

    /// <summary>It is a folder.</summary>
    Folder,

    /// <summary>It may not be read, or another program holds it.</summary>
    NotAllowed,

    /// <summary>There is nothing in it.</summary>
    Empty,

    /// <summary>It is beyond one of the limits.</summary>
    TooLarge,

    /// <summary>It is no text and no workbook.</summary>
    Binary,

    /// <summary>It is a workbook that opens with a password only.</summary>
    PasswordProtected,

    /// <summary>It is a workbook or a text that cannot be read to its end.</summary>
    Damaged,

    /// <summary>It is a table in a format that has to be saved as another first.</summary>
    OtherFormat,
}
