namespace Calx.Papers.Documents;

/// <summary>A cell of a table.</summary>
/// <param name="Text">What is in it; empty for a cell to write in.</param>
/// <param name="HeightInMillimetres">How high it is at least, in mm; 0 for as high as its text.</param>
/// <param name="IsHeading">Whether it names its row.</param>
public sealed record PaperCell(Phrase Text, double HeightInMillimetres = 0, bool IsHeading = false)
{
    /// <summary>A cell with text.</summary>
    public static implicit operator PaperCell(string text) => new(Phrase.Of(text));

    /// <summary>The same, for languages without such conversions.</summary>
    public static PaperCell FromString(string text) => new(Phrase.Of(text));
}
