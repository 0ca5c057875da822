using Calx.Practicals.Readings;

namespace Calx.Papers.Tables;

/// <summary>Cells merged over rows: from the first to the last row in the first column.</summary>
internal sealed record MergedCells(int FirstRow, int LastRow, int Column)
{
    /// <summary>Reads <c>A2:A4</c>; null where it spans one row only.</summary>
    public static MergedCells? Parse(string? range)
    {
        string[] ends = (range ?? "").Split(':');
        return ends.Length == 2 && CellReference.Column(ends[0]) is int column
            && CellReference.Row(ends[0]) is int first && CellReference.Row(ends[1]) is int last && last > first
            ? new MergedCells(first, last, column)
            : null;
    }

    /// <summary>Writes the text of the first row into the others that hold anything.</summary>
    public void FillDown(List<(int Number, List<TableCell> Cells)> rows)
    {
        int at = rows.BinarySearch((FirstRow, []), Comparer<(int Number, List<TableCell> Cells)>.Create((a, b) => a.Number.CompareTo(b.Number)));
        if (at < 0 || rows[at].Cells.Find(c => c.Column == Column) is not TableCell written)
            return;
        for (int i = at + 1; i < rows.Count && rows[i].Number <= LastRow; i++)
        {
            List<TableCell> cells = rows[i].Cells;
            int place = cells.FindIndex(c => c.Column >= Column);
            if (place >= 0 && cells[place].Column == Column)
                continue;
            cells.Insert(place < 0 ? cells.Count : place, new TableCell(Column, written.Text, written.DecimalsShown));
        }
    }
}
