using Calx.Papers.Texts;

namespace Calx.Papers.Documents;

/// <summary>How a paper is printed.</summary>
/// <param name="Size">The sheet.</param>
/// <param name="IsLarge">Whether its letters are large (18 point), for those who see little.</param>
/// <param name="Tint">Colour of the sheet as six hexadecimal digits, for those whom white dazzles, or null for white.</param>
/// <param name="IsOneStep">Whether student sheets have one step on each page, in large letters.</param>
public sealed record PaperLook(SheetSize Size, bool IsLarge, string? Tint, bool IsOneStep = false)
{
    /// <summary>Whether its letters are somewhat smaller and its lines closer: for lists that are to stay on one side.</summary>
    public bool IsDense { get; private init; }

    /// <summary>The language of its own texts; British English where nothing else is said.</summary>
    public PaperLanguage Language { get; init; } = PaperLanguage.BritishEnglish;

    /// <summary>Whether it hangs on a wall: letters of 22 point and more, to be read from two metres.</summary>
    public bool IsWall { get; private init; }

    /// <summary>The sheet that hangs on a wall, where that is another.</summary>
    public SheetSize? Wall { get; init; }

    /// <summary>The same for a wall: as large as it has to be, whatever the size of letters in hand.</summary>
    public PaperLook ForWall() => this with { Size = Wall ?? Size, IsLarge = false, IsDense = false, IsWall = true };

    /// <summary>Width and height of the sheet in mm.</summary>
    internal (double Width, double Height) Sheet => Size switch
    {
        SheetSize.A3 => (297, 420),
        SheetSize.Letter => (215.9, 279.4),
        _ => (210, 297),
    };

    /// <summary>How much larger all is on a wall than on A4, whose letters have 22 point.</summary>
    internal double WallScale => Size == SheetSize.A3 ? Math.Sqrt(2) : 1;

    /// <summary>The same, denser; large letters stay large.</summary>
    public PaperLook Denser() => IsLarge ? this : this with { IsDense = true };

    /// <summary>A4, letters of usual size, white.</summary>
    public static PaperLook Usual { get; } = new(SheetSize.A4, false, null);
}
