using System.Globalization;

namespace Calx.Papers.SheetCheck;

/// <summary>Where a text of a sheet stands, in words that a person finds it by.</summary>
public sealed class SheetPlace
{
    private readonly string words;
    private readonly IReadOnlyList<LineStart> lines;

    private SheetPlace(string words, IReadOnlyList<LineStart> lines) => (this.words, this.lines) = (words, lines);

    /// <summary>The sheet as a whole: where something should stand and does not.</summary>
    public static SheetPlace Whole { get; } = new("the whole sheet", []);

    /// <summary>A paragraph outside tables, counted from 1; blank ones do not count.</summary>
    public static SheetPlace Paragraph(int number) => new(string.Create(CultureInfo.InvariantCulture, $"page text, paragraph {number}"), []);

    /// <summary>A cell of a table; all counted from 1, a merged cell as many columns as it spans.</summary>
    public static SheetPlace Cell(int table, int row, int column) =>
        new(string.Create(CultureInfo.InvariantCulture, $"table {table}, row {row}, column {column}"), []);

    /// <summary>Lines of a text file.</summary>
    internal static SheetPlace Lines(IReadOnlyList<LineStart> lines) => new("", lines);

    /// <summary>The place of one character of the text.</summary>
    public string At(int offset)
    {
        if (lines.Count == 0)
        {
            return words;
        }

        LineStart line = lines.Last(l => l.Offset <= Math.Max(offset, lines[0].Offset));
        return string.Create(CultureInfo.InvariantCulture, $"line {line.Line}, column {line.Column + Math.Max(0, offset - line.Offset)}");
    }

    /// <summary>Where a line of a text file begins within the text that is placed.</summary>
    /// <param name="Offset">Character of the text, from 0.</param>
    /// <param name="Line">Line of the file, from 1.</param>
    /// <param name="Column">Column of the file, from 1.</param>
    internal readonly record struct LineStart(int Offset, int Line, int Column);
}
