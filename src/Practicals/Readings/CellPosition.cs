using System.Globalization;

namespace Calx.Practicals.Readings;

/// <summary>Where a cell stands in a file, as a person finds it there: sheet, row and column.</summary>
public sealed class CellPosition
{
    /// <summary>Takes a place.</summary>
    /// <param name="sheet">The sheet's name; empty for a file without sheets.</param>
    /// <param name="row">Row number, from 1.</param>
    /// <param name="column">Column number, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Row or column is below 1.</exception>
    public CellPosition(string sheet, int row, int column)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentOutOfRangeException.ThrowIfLessThan(row, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(column, 1);
        Sheet = sheet;
        Row = row;
        Column = column;
    }

    /// <summary>The sheet's name; empty for a file without sheets.</summary>
    public string Sheet { get; }

    /// <summary>Row number, from 1.</summary>
    public int Row { get; }

    /// <summary>Column number, from 1.</summary>
    public int Column { get; }

    /// <summary>The column's letters as a spreadsheet shows them: 1 is A, 27 is AA.</summary>
    public string ColumnLetter => LetterOf(Column);

    /// <summary>The letters of a column: 1 is A, 26 is Z, 27 is AA.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="column"/> is below 1.</exception>
    public static string LetterOf(int column)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(column, 1);
        string letters = "";
        for (int rest = column; rest > 0; rest = (rest - 1) / 26)
            letters = (char)('A' + (rest - 1) % 26) + letters;
        return letters;
    }

    /// <summary>The cell as a spreadsheet names it, with its sheet where there is one: <c>Class 9b, C7</c>.</summary>
    public override string ToString() => (Sheet.Length == 0 ? "" : Sheet + ", ")
        + ColumnLetter + Row.ToString(CultureInfo.InvariantCulture);
}
