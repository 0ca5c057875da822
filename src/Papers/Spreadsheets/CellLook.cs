namespace Calx.Papers.Spreadsheets;

/// <summary>How a cell looks and whether it can be written in while its sheet is protected.</summary>
internal sealed record CellLook
{
    /// <summary>Fill of a cell for readings.</summary>
    private const string Paper = "FFF8DC";

    /// <summary>Fill of a cell that is worked out.</summary>
    private const string Grey = "EFEFEF";

    /// <summary>Nothing in particular, locked.</summary>
    public static CellLook Plain { get; } = new();

    /// <summary>The title of a sheet.</summary>
    public static CellLook Title { get; } = new() { IsBold = true, Scale = 1.45 };

    /// <summary>A sentence over several lines.</summary>
    public static CellLook Sentence { get; } = new() { Wraps = true };

    /// <summary>A subheading.</summary>
    public static CellLook Subheading { get; } = new() { IsBold = true };

    /// <summary>A heading of a column.</summary>
    public static CellLook Heading { get; } = new() { Stands = Side.Left, IsBold = true, Wraps = true, IsFramed = true, Fill = "DDDDDD" };

    /// <summary>A heading of a row.</summary>
    public static CellLook RowHeading { get; } = new() { Stands = Side.Left, Wraps = true, IsFramed = true };

    /// <summary>A cell for words.</summary>
    public static CellLook Words { get; } = new() { Stands = Side.Left, IsFramed = true, Wraps = true, Fill = Paper, IsUnlocked = true };

    /// <summary>A short name or number in the middle of its cell, to be written over.</summary>
    public static CellLook Name { get; } = new() { IsFramed = true, Stands = Side.Middle, Fill = Paper, IsUnlocked = true };

    /// <summary>Format of numbers, or null for that of the program.</summary>
    public string? Format { get; init; }

    /// <summary>Colour of the ground as six hexadecimal digits, or null.</summary>
    public string? Fill { get; init; }

    /// <summary>Size of the letters, 1 for the usual.</summary>
    public double Scale { get; init; } = 1;

    /// <summary>Whether its letters are bold.</summary>
    public bool IsBold { get; init; }

    /// <summary>Whether it has a thin frame.</summary>
    public bool IsFramed { get; init; }

    /// <summary>Where in its cell it stands.</summary>
    public Side Stands { get; init; }

    /// <summary>Whether its text is broken into lines.</summary>
    public bool Wraps { get; init; }

    /// <summary>Whether its text stands upright, to be read from below.</summary>
    public bool IsUpright { get; init; }

    /// <summary>Whether it can be written in while the sheet is protected.</summary>
    public bool IsUnlocked { get; init; }

    /// <summary>Whether what stands in it stays text when somebody edits it, whatever sign it begins with.</summary>
    public bool IsQuoted { get; init; }

    /// <summary>A cell for a reading.</summary>
    public static CellLook Reading(string? format) => Words with { Stands = Side.Right, Wraps = false, Format = Off(format) };

    /// <summary>A cell that is worked out.</summary>
    public static CellLook WorkedOut(string? format) => new() { Stands = Side.Right, IsFramed = true, Fill = Grey, Format = Off(format) };

    /// <summary>With room as wide as a bracket behind the number, so that it stands off the frame.</summary>
    private static string? Off(string? format) => format is null ? null : $"{format}_)";
}
