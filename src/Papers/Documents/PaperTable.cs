namespace Calx.Papers.Documents;

/// <summary>A table: columns with their headings, and rows of cells. No row is ever split between pages, and the headings stand on
/// every page.</summary>
public sealed class PaperTable
{
    /// <summary>Makes one.</summary>
    /// <param name="columns">Its columns, from the left.</param>
    /// <param name="rows">Its rows; each has a cell a column.</param>
    /// <param name="look">How it looks.</param>
    /// <exception cref="ArgumentException">There is no column, or a row has another number of cells.</exception>
    public PaperTable(IReadOnlyList<PaperColumn> columns, IReadOnlyList<IReadOnlyList<PaperCell>> rows, TableRuling look = TableRuling.Ruled)
    {
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(rows);
        if (columns.Count == 0 || rows.Any(r => r.Count != columns.Count))
        {
            throw new ArgumentException("A cell for each column is expected in every row.", nameof(rows));
        }

        (Columns, Rows, Look) = (columns, rows, look);
    }

    /// <summary>Its columns, from the left.</summary>
    public IReadOnlyList<PaperColumn> Columns { get; }

    /// <summary>Its rows, each with a cell a column.</summary>
    public IReadOnlyList<IReadOnlyList<PaperCell>> Rows { get; }

    /// <summary>How it looks.</summary>
    public TableRuling Look { get; }

    /// <summary>Whether any column has a heading.</summary>
    public bool HasHeadings => Columns.Any(c => c.Heading.Text.Length > 0);
}
