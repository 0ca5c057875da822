namespace Calx.Papers.SheetCheck;

/// <summary>A table of a sheet.</summary>
public sealed class SheetTable
{
    internal SheetTable(int number, IReadOnlyList<IReadOnlyList<SheetCell>> rows) => (Number, Rows) = (number, rows);

    /// <summary>Which table of the sheet it is, from 1.</summary>
    public int Number { get; }

    /// <summary>Its rows, each with its cells from left to right.</summary>
    public IReadOnlyList<IReadOnlyList<SheetCell>> Rows { get; }

    /// <summary>Columns of its widest row.</summary>
    public int Columns => Rows.Count == 0 ? 0 : Rows.Max(r => r.Count == 0 ? 0 : r[^1].Column + r[^1].Span - 1);

    /// <summary>The cell that covers a place, or null.</summary>
    /// <param name="row">Row, from 1.</param>
    /// <param name="column">Column, from 1.</param>
    public SheetCell? At(int row, int column) =>
        row < 1 || row > Rows.Count ? null : Rows[row - 1].FirstOrDefault(c => c.Column <= column && column < c.Column + c.Span);

    /// <summary>The cells of a column.</summary>
    public IEnumerable<SheetCell> Column(int column) => Enumerable.Range(1, Rows.Count).Select(row => At(row, column)).OfType<SheetCell>();
}

/// <summary>A cell of a table.</summary>
/// <param name="Row">Its row, from 1.</param>
/// <param name="Column">Its first column, from 1.</param>
/// <param name="Span">How many columns it covers, from 1.</param>
/// <param name="Text">Its text, paragraphs joined by line breaks; that of the first cell where cells are merged downwards.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="IsContinued">Whether it is the lower part of cells merged downwards.</param>
public sealed record SheetCell(int Row, int Column, int Span, string Text, SheetPlace Place, bool IsContinued);
