namespace Calx.Practicals.Readings;

/// <summary>Finds the row that names the columns, under whatever titles and notes stand above it.</summary>
internal sealed class HeadingRowFinder(HeadingLexicon lexicon)
{
    /// <summary>How many filled rows are looked through: titles, dates and instructions take a dozen, not fifty.</summary>
    public const int RowsLookedAt = 50;

    private readonly HeadingMatcher wide = new(lexicon, lexicon.Wide);
    private readonly HeadingMatcher longForm = new(lexicon, lexicon.Long);

    /// <summary>The heading row of a sheet, or null.</summary>
    public HeadingRow? Find(CellTable table)
    {
        HeadingRow? best = null;
        int bestScore = 0;
        int filled = 0;
        for (int i = 0; i < table.Rows.Count && filled < RowsLookedAt; i++)
        {
            TableCell[] texts = [.. table.Rows[i].Cells.Where(IsWords)];
            filled += texts.Length > 0 ? 1 : 0;
            foreach (bool isLong in (ReadOnlySpan<bool>)[false, true])
            {
                HeadingCell[] cells = Cells(texts, isLong);
                int score = isLong ? LongScore(cells) : WideScore(cells);
                if (score > bestScore)
                    (best, bestScore) = (new HeadingRow(i, cells, isLong), score);
            }
        }
        return best is null ? null : WithCellsAbove(table, best);
    }

    /// <summary>Whether the readings are named down a column instead: a table with one group a column.</summary>
    public bool RunsDown(CellTable table) => table.Rows.Take(RowsLookedAt)
        .SelectMany(row => row.Cells.Take(1))
        .Where(IsWords)
        .Count(cell => Names(Cells([cell], false)[0])) >= 2;

    /// <summary>The meanings of a text as the name of a reading, in a table of one row a reading.</summary>
    public HeadingCell ReadingNamed(TableCell cell) => Cells([cell], false)[0];

    private HeadingCell[] Cells(TableCell[] texts, bool isLong) => [.. texts.Select(cell =>
    {
        HeadingText words = lexicon.Text(cell.Text);
        return new HeadingCell(cell.Column, cell.Text, words, (isLong ? longForm : wide).Candidates(words));
    })];

    private static bool IsWords(TableCell cell) =>
        NumberText.Read(cell.Text, new NumberExpectation(mayBeNegative: true)) is NumberCell.Rejected;

    private static bool Names(HeadingCell cell) =>
        cell.Best.Count > 0 && cell.Best.All(c => c.Target.Column is not null) && (cell.Best.Count == 1 || cell.Best[0].IsSure);

    private static int WideScore(HeadingCell[] cells)
    {
        int numbered = cells.Count(c => c.IsNumberedMass);
        int readings = cells.Count(Names) + (numbered >= 2 ? numbered : 0);
        int wrongUnit = cells.Count(c => c.WrongUnit is { Target.Column: not null });
        int said = cells.Count(c => c.Best.Any(b => b.Target.Said is not null));
        return readings >= 1 && readings + said + wrongUnit >= 2 ? 10 * readings + said : 0;
    }

    private static int LongScore(HeadingCell[] cells)
    {
        HeadingCell[] names = [.. cells.Where(c => c.Best.Any(b => b.Target.Said is ColumnMeaning.ReadingName))];
        HeadingCell[] values = [.. cells.Where(c => c.Best.Any(b => b.Target.Said is ColumnMeaning.ReadingValue))];
        int said = cells.Count(c => c.Best.Any(b => b.Target.Said is ColumnMeaning.Said));
        // 15: more than one reading's name, which may be a cell of the first row, less than two, which head a wide table.
        return names.Length > 0 && values.Length > 0 && names.Union(values).Count() >= 2 ? 15 + said : 0;
    }

    // A heading over two rows: 'Group' stands in the row above where the masses have their own headings below.
    private HeadingRow WithCellsAbove(CellTable table, HeadingRow row)
    {
        if (row.Index == 0 || table.Rows[row.Index - 1].Number != table.Rows[row.Index].Number - 1)
            return row;
        HashSet<int> named = [.. table.Rows[row.Index].Cells.Where(c => c.Text.Trim().Length > 0).Select(c => c.Column)];
        TableCell[] above = [.. table.Rows[row.Index - 1].Cells.Where(c => !named.Contains(c.Column) && IsWords(c))];
        HeadingCell[] said = [.. Cells(above, row.IsLong).Where(c => c.Best.Any(b => b.IsSure && b.Target.Said is not null))];
        return said.Length == 0
            ? row
            : new HeadingRow(row.Index, [.. row.Cells.Concat(said).OrderBy(c => c.Column)], row.IsLong);
    }
}
