namespace Calx.Papers.SheetCheck;

/// <summary>How large a worksheet is read. A worksheet has two to six sides; each limit is far above that and keeps a slip or an attack
/// from filling the memory.</summary>
internal static class SheetLimits
{
    /// <summary>Bytes of the file: photographs in it are not read, but make it large.</summary>
    public const long LargestFile = 20_000_000;

    /// <summary>Bytes of the part that holds the text, once unpacked: a side of a word processor's text takes some 100 kB.</summary>
    public const long LargestText = 20_000_000;

    /// <summary>Parts in the package; a document with a hundred pictures has some hundreds.</summary>
    public const int MostParts = 5_000;

    /// <summary>Elements inside each other; tables in tables with drawings reach some 60.</summary>
    public const int Depth = 200;

    /// <summary>Paragraphs, those in cells too: 40 sides of 100.</summary>
    public const int MostParagraphs = 4_000;

    /// <summary>Characters of all texts together: 60 full sides.</summary>
    public const int MostCharacters = 200_000;

    /// <summary>Characters of one paragraph: two sides without a break. The time that a search for patterns takes grows faster than a paragraph.</summary>
    public const int LongestParagraph = 5_000;

    /// <summary>Columns of a table that a merged cell may claim to span.</summary>
    public const int MostColumns = 100;
}
