namespace Calx.Practicals.Readings;

/// <summary>A sheet of cells, however it was kept: a CSV file is one sheet, a workbook is several.</summary>
public sealed class CellTable
{
    /// <summary>Takes a sheet.</summary>
    /// <param name="sheet">The sheet's name; empty for a file that has no sheets.</param>
    /// <param name="rows">Rows in ascending order of number; blank ones may be left out.</param>
    /// <exception cref="ArgumentException">Rows are not in ascending order.</exception>
    public CellTable(string sheet, IReadOnlyList<CellRow> rows)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(rows);
        for (int i = 1; i < rows.Count; i++)
        {
            if (rows[i].Number <= rows[i - 1].Number)
                throw new ArgumentException("Rows stand in ascending order of number.", nameof(rows));
        }
        Sheet = sheet;
        Rows = rows;
    }

    /// <summary>The sheet's name; empty for a file that has no sheets.</summary>
    public string Sheet { get; }

    /// <summary>The rows in ascending order of number.</summary>
    public IReadOnlyList<CellRow> Rows { get; }
}
