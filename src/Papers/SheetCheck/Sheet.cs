namespace Calx.Papers.SheetCheck;

/// <summary>A worksheet as it is read by the rules, whatever file it came from.</summary>
public sealed class Sheet
{
    internal Sheet(IReadOnlyList<SheetParagraph> paragraphs, IReadOnlyList<SheetTable> tables, IReadOnlyList<string> notes) =>
        (Paragraphs, Tables, Notes) = (paragraphs, tables, notes);

    /// <summary>All texts in the order of the page, those in cells too.</summary>
    public IReadOnlyList<SheetParagraph> Paragraphs { get; }

    /// <summary>All tables in the order in which they begin, those inside others too.</summary>
    public IReadOnlyList<SheetTable> Tables { get; }

    /// <summary>What a person should know of the reading: macros that were not looked at.</summary>
    public IReadOnlyList<string> Notes { get; }
}

/// <summary>One text of a sheet.</summary>
/// <param name="Text">What is written; a line that is broken by hand has a line break.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="IsHeading">Whether it heads a part of the sheet.</param>
/// <param name="InTable">Whether it stands in a cell.</param>
public sealed record SheetParagraph(string Text, SheetPlace Place, bool IsHeading, bool InTable);
