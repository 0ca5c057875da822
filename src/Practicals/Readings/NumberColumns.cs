namespace Calx.Practicals.Readings;

/// <summary>What the numbers of each column are read against: unit, sign, and whether points are about.</summary>
internal static class NumberColumns
{
    /// <summary>Expectations by column number, for columns of readings and ready-made masses.</summary>
    public static Dictionary<int, NumberExpectation> Of(
        CellTable table, IReadOnlyList<ColumnMatch> columns, ExpectedTable expected)
    {
        HashSet<int> numeric = [.. columns.Where(c => IdOf(c.Meaning) is not null).Select(c => c.Column)];
        bool points = PointsAround(table, numeric);
        return columns.Where(c => numeric.Contains(c.Column)).ToDictionary(
            c => c.Column,
            c => Of(expected.Columns.First(e => e.Id == IdOf(c.Meaning)), c.Unit, points));
    }

    /// <summary>The expectation for one expected column.</summary>
    public static NumberExpectation Of(ExpectedColumn column, string? writtenUnit, bool points) =>
        new(HeadingUnit.Usual(column.Unit), writtenUnit, column.Limits.MayBeNegative, points);

    /// <summary>Whether any number in these columns has a decimal point.</summary>
    public static bool PointsAround(CellTable table, IReadOnlySet<int> columns) => table.Rows.Any(row => row.Cells.Any(
        cell => columns.Contains(cell.Column) && HasPoint(cell.Text)));

    private static bool HasPoint(string text)
    {
        int at = text.IndexOf('.', StringComparison.Ordinal);
        return at > 0 && at + 1 < text.Length && char.IsAsciiDigit(text[at - 1]) && char.IsAsciiDigit(text[at + 1]);
    }

    private static string? IdOf(ColumnMeaning meaning) => meaning switch
    {
        ColumnMeaning.Reading reading => reading.BaseId,
        ColumnMeaning.ReadyMade made => made.ColumnId,
        _ => null,
    };
}
