using System.Globalization;
using Calx.Papers.Texts;

namespace Calx.Papers.SheetCheck;

/// <summary>Where a text of a sheet stands, in words that a person finds it by.</summary>
public sealed class SheetPlace
{
    private readonly Func<SheetCheckTexts, string> words;
    private readonly IReadOnlyList<LineStart> lines;

    private SheetPlace(Func<SheetCheckTexts, string> words, IReadOnlyList<LineStart> lines) => (this.words, this.lines) = (words, lines);

    /// <summary>The sheet as a whole: where something should stand and does not.</summary>
    public static SheetPlace Whole { get; } = new(t => t.WholeSheet, []);

    /// <summary>A paragraph outside tables, counted from 1; blank ones do not count.</summary>
    public static SheetPlace Paragraph(int number) => new(t => t.PlaceParagraph(InDigits(number)), []);

    /// <summary>A cell of a table; all counted from 1, a merged cell as many columns as it spans.</summary>
    public static SheetPlace Cell(int table, int row, int column) =>
        new(t => t.PlaceCell(InDigits(table), InDigits(row), InDigits(column)), []);

    /// <summary>Lines of a text file.</summary>
    internal static SheetPlace Lines(IReadOnlyList<LineStart> lines) => new(_ => "", lines);

    /// <summary>The place of one character of the text.</summary>
    /// <param name="offset">The character, from 0.</param>
    /// <param name="language">In which language; null for British English.</param>
    public string At(int offset, PaperLanguage? language = null)
    {
        SheetCheckTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        if (lines.Count == 0)
        {
            return words(texts);
        }

        LineStart line = lines.Last(l => l.Offset <= Math.Max(offset, lines[0].Offset));
        return texts.PlaceLine(InDigits(line.Line), InDigits(line.Column + Math.Max(0, offset - line.Offset)));
    }

    private static string InDigits(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Where a line of a text file begins within the text that is placed.</summary>
    /// <param name="Offset">Character of the text, from 0.</param>
    /// <param name="Line">Line of the file, from 1.</param>
    /// <param name="Column">Column of the file, from 1.</param>
    internal readonly record struct LineStart(int Offset, int Line, int Column);
}
