using System.Globalization;
using Calx.Papers.Documents.Word;
using Calx.Practicals.Readings;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Spreadsheets;

/// <summary>A sheet of a workbook as it is drawn up, cell by cell. Rows and columns are counted from 1.</summary>
/// <param name="name">What its tab is called.</param>
/// <param name="looks">Where the workbook's looks are kept.</param>
internal sealed class SheetDraft(string name, LookTable looks)
{
    private const double UsualWidth = 9;
    private const double IndentInLetters = 1.5;
    private readonly SortedDictionary<(int Row, int Column), Cell> cells = [];
    private readonly SortedDictionary<int, double> widths = [];
    private readonly Dictionary<int, double> heights = [];
    private readonly List<string> merged = [];

    /// <summary>What its tab is called.</summary>
    public string Name => name;

    /// <summary>What reading cells are held to.</summary>
    public List<CheckedRange> Checked { get; } = [];

    /// <summary>The row of headings: above it and itself stay in sight, and it is printed on every page. 0 for none.</summary>
    public int HeadingRow { get; set; }

    /// <summary>Whether nothing in it is locked.</summary>
    public bool IsFree { get; init; }

    /// <summary>Whether it is printed on one side, however small.</summary>
    public bool IsOnePage { get; init; }

    /// <summary>Whether rows can be chosen by what stands in a column.</summary>
    public bool HasFilter { get; init; }

    /// <summary>The cells that are filtered, with dollar signs; null for none.</summary>
    public string? Filtered => !HasFilter ? null
        : string.Create(CultureInfo.InvariantCulture, $"$A${HeadingRow}:${CellPosition.LetterOf(LastColumn)}${Math.Max(LastRow, HeadingRow + 1)}");

    /// <summary>How many columns on the left stay in sight.</summary>
    public int FrozenColumns { get; set; }

    /// <summary>The last row with a cell.</summary>
    public int LastRow => cells.Keys.Max(k => k.Row);

    /// <summary>The last column with a cell.</summary>
    public int LastColumn => cells.Keys.Max(k => k.Column);

    /// <summary>A cell as formulas name it: <c>C7</c>.</summary>
    public static string Reference(int row, int column) => string.Create(CultureInfo.InvariantCulture, $"{CellPosition.LetterOf(column)}{row}");

    /// <summary>A text. It is never read as a formula, whatever sign it begins with, and stays a text when somebody edits it.</summary>
    public void Text(int row, int column, string text, CellLook look) => cells[(row, column)] = new Cell
    {
        DataType = CellValues.InlineString,
        StyleIndex = looks.Of(text.Length > 0 && text[0] is '=' or '+' or '-' or '@' or '\t' or '\r' ? look with { IsQuoted = true } : look),
        InlineString = new InlineString(new Text(WordText.Allowed(text)) { Space = SpaceProcessingModeValues.Preserve }),
    };

    /// <summary>A number.</summary>
    public void Number(int row, int column, double number, CellLook look) => cells[(row, column)] = new Cell
    {
        StyleIndex = looks.Of(look),
        CellValue = new CellValue(number.ToString("R", CultureInfo.InvariantCulture)),
    };

    /// <summary>An empty cell.</summary>
    public void Blank(int row, int column, CellLook look) => cells[(row, column)] = new Cell { StyleIndex = looks.Of(look) };

    /// <summary>A formula of readings. Its value is an empty text as long as nothing has been written; a program that takes values from the
    /// file as they are works such a one out all the same.</summary>
    public void Formula(int row, int column, string formula, CellLook look) => cells[(row, column)] = new Cell
    {
        DataType = CellValues.String, StyleIndex = looks.Of(look), CellFormula = new CellFormula(formula), CellValue = new CellValue(""),
    };

    /// <summary>A formula whose value is known.</summary>
    public void Formula(int row, int column, string formula, CellLook look, double value) => cells[(row, column)] = new Cell
    {
        StyleIndex = looks.Of(look),
        CellFormula = new CellFormula(formula),
        CellValue = new CellValue(value.ToString("R", CultureInfo.InvariantCulture)),
    };

    /// <summary>A text over several columns, as high as its lines.</summary>
    public void Band(int row, int columns, string text, CellLook look)
    {
        Text(row, 1, text, look);
        merged.Add($"{Reference(row, 1)}:{Reference(row, columns)}");
        Lines(row, Lines(text, Enumerable.Range(1, columns).Sum(Width)), look.Scale);
    }

    /// <summary>Empty cells of a row that are one to write in.</summary>
    public void Space(int row, int first, int last, CellLook look)
    {
        for (int column = first; column <= last; column++)
        {
            Blank(row, column, look);
        }

        merged.Add($"{Reference(row, first)}:{Reference(row, last)}");
    }

    /// <summary>Sets the height of a row, in lines of the usual size.</summary>
    public void Tall(int row, double lines) => heights[row] = Math.Round(lines * looks.Points * 1.36, 1);

    /// <summary>Sets the width of a column, in digits of the usual size: larger letters make it wider by themselves.</summary>
    public void Wide(int column, double letters) => widths[column] = letters;

    /// <summary>Makes a row as high as the longest of its texts needs.</summary>
    /// <param name="row">The row.</param>
    /// <param name="least">Lines that it has at least.</param>
    public void Fit(int row, double least = 1)
    {
        IEnumerable<int> lines = cells.Where(c => c.Key.Row == row && c.Value.InlineString is not null)
            .Select(c => Lines(c.Value.InlineString!.InnerText, Width(c.Key.Column) - IndentInLetters));
        Lines(row, Math.Max(least, lines.DefaultIfEmpty(1).Max()), 1);
    }

    /// <summary>The sheet.</summary>
    public Worksheet Worksheet(SheetPrint print) => new SheetMarkup(this, looks.Points, print).Of(widths, Rows(), merged);

    private double Width(int column) => widths.GetValueOrDefault(column, UsualWidth);

    private void Lines(int row, double lines, double scale) => heights[row] = Math.Round((lines * looks.Points * scale * 1.36) + 3, 1);

    /// <summary>Lines that a text takes: words are broken between, so that some room is lost in each.</summary>
    private static int Lines(string text, double letters)
    {
        int lines = 1;
        double left = letters;
        foreach (string word in text.Split(' ', '\u00a0'))
        {
            if (word.Length > left && left < letters)
            {
                lines++;
                left = letters;
            }

            left -= word.Length + 1;
        }

        return lines;
    }

    private IEnumerable<Row> Rows()
    {
        foreach (IGrouping<int, KeyValuePair<(int Row, int Column), Cell>> row in cells.GroupBy(c => c.Key.Row))
        {
            var written = new Row { RowIndex = (uint)row.Key };
            if (heights.TryGetValue(row.Key, out double height))
            {
                (written.Height, written.CustomHeight) = (height, true);
            }

            foreach (KeyValuePair<(int Row, int Column), Cell> cell in row)
            {
                cell.Value.CellReference = Reference(row.Key, cell.Key.Column);
                written.Append(cell.Value);
            }

            yield return written;
        }
    }
}
