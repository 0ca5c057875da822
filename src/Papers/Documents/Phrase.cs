namespace Calx.Papers.Documents;

/// <summary>A line of text, of which parts may stand out. Formulas carry their subscripts as characters (CO₂), so that they are
/// the same on paper, in a word processor and in a table of figures.</summary>
public sealed class Phrase
{
    /// <summary>Makes one.</summary>
    /// <param name="pieces">Its pieces in order.</param>
    public Phrase(params IReadOnlyList<PhrasePiece> pieces)
    {
        ArgumentNullException.ThrowIfNull(pieces);
        Pieces = [.. pieces.Where(p => p.Text.Length > 0)];
    }

    /// <summary>Its pieces in order; none is empty.</summary>
    public IReadOnlyList<PhrasePiece> Pieces { get; }

    /// <summary>All of it without emphasis.</summary>
    public string Text => string.Concat(Pieces.Select(p => p.Text));

    /// <summary>Plain text.</summary>
    public static Phrase Of(string text) => new(new PhrasePiece(text, PhraseLook.Plain));

    /// <summary>Text in bold.</summary>
    public static Phrase Bold(string text) => new(new PhrasePiece(text, PhraseLook.Bold));

    /// <summary>This one and another behind it.</summary>
    public Phrase Then(string text, PhraseLook look = PhraseLook.Plain) => new([.. Pieces, new PhrasePiece(text, look)]);

    /// <summary>Plain text where a phrase is asked for.</summary>
    public static implicit operator Phrase(string text) => Of(text);

    /// <summary>The same, for languages without such conversions.</summary>
    public static Phrase FromString(string text) => Of(text);

    /// <summary>Its text.</summary>
    public override string ToString() => Text;
}
