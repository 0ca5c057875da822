namespace Calx.Practicals.Readings;

/// <summary>Columns that have cells and no heading: the groups' names, where no other column has them, or ignored.</summary>
internal static class WithoutHeading
{
    /// <summary>The columns with those added that only have cells below the heading row.</summary>
    /// <param name="matched">The columns that have a heading.</param>
    /// <param name="table">The sheet.</param>
    /// <param name="firstRow">The first row below the headings.</param>
    /// <param name="why">Why a column without a heading is not used.</param>
    public static IReadOnlyList<ColumnMatch> Added(IReadOnlyList<ColumnMatch> matched, CellTable table, int firstRow, string why)
    {
        HashSet<int> known = [.. matched.Select(c => c.Column)];
        SortedSet<int> bare = [];
        for (int i = firstRow; i < table.Rows.Count; i++)
        {
            foreach (TableCell cell in table.Rows[i].Cells)
            {
                if (!known.Contains(cell.Column) && !string.IsNullOrWhiteSpace(cell.Text))
                    bare.Add(cell.Column);
            }
        }
        bool needsGroup = !matched.Any(c => c.Meaning is ColumnMeaning.Said { Kind: SaidOfGroup.Group });
        int firstReading = matched.Where(c => c.Meaning is not ColumnMeaning.Ignored).Select(c => c.Column).DefaultIfEmpty(0).Min();
        return [.. matched.Concat(bare.Select(column => Bare(column, needsGroup && column == bare.Min && column < firstReading, why)))
            .OrderBy(c => c.Column)];
    }

    private static ColumnMatch Bare(int column, bool isGroup, string why) => isGroup
        ? new ColumnMatch("", column, new ColumnMeaning.Said(SaidOfGroup.Group), MatchedBy.Order)
        : new ColumnMatch("", column, new ColumnMeaning.Ignored(why), MatchedBy.Nothing);
}
