namespace Calx.Practicals.Readings;

/// <summary>One row of a table: its number in the file and its cells from left to right. Cells may be missing.</summary>
public sealed class CellRow
{
    /// <summary>Takes a row.</summary>
    /// <param name="number">Row number as a person sees it in the file, from 1.</param>
    /// <param name="cells">Cells in ascending order of column; empty ones may be left out.</param>
    /// <exception cref="ArgumentException">Columns are not in ascending order.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="number"/> is below 1.</exception>
    public CellRow(int number, IReadOnlyList<TableCell> cells)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentNullException.ThrowIfNull(cells);
        for (int i = 1; i < cells.Count; i++)
        {
            if (cells[i].Column <= cells[i - 1].Column)
                throw new ArgumentException("Cells stand in ascending order of column.", nameof(cells));
        }
        Number = number;
        Cells = cells;
    }

    /// <summary>Row number as in the file, from 1.</summary>
    public int Number { get; }

    /// <summary>The cells in ascending order of column.</summary>
    public IReadOnlyList<TableCell> Cells { get; }

    /// <summary>A row of texts in columns 1, 2, 3 ...; null and empty texts are left out.</summary>
    public static CellRow Of(int number, params string?[] texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        List<TableCell> cells = [];
        for (int i = 0; i < texts.Length; i++)
        {
            if (!string.IsNullOrEmpty(texts[i]))
                cells.Add(new TableCell(i + 1, texts[i]!));
        }
        return new CellRow(number, cells);
    }
}
