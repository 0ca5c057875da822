namespace Calx.Papers.Documents;

/// <summary>How a paper is printed.</summary>
/// <param name="Size">The sheet.</param>
/// <param name="IsLarge">Whether its letters are large (18 point), for those who see little.</param>
/// <param name="Tint">Colour of the sheet as six hexadecimal digits, for those whom white dazzles, or null for white.</param>
public sealed record PaperLook(SheetSize Size, bool IsLarge, string? Tint)
{
    /// <summary>Whether its letters are somewhat smaller and its lines closer: for lists that are to stay on one side.</summary>
    public bool IsDense { get; private init; }

    /// <summary>The same, denser; large letters stay large.</summary>
    public PaperLook Denser() => IsLarge ? this : this with { IsDense = true };

    /// <summary>A4, letters of usual size, white.</summary>
    public static PaperLook Usual { get; } = new(SheetSize.A4, false, null);
}
