namespace Calx.Practicals.Readings;

/// <summary>A row of units right below the headings: g, g, g.</summary>
internal static class UnitRow
{
    /// <summary>The columns with the units of the row, or null where the row is none of units.</summary>
    public static IReadOnlyList<ColumnMatch>? Of(CellRow row, IReadOnlyList<ColumnMatch> columns)
    {
        TableCell[] filled = [.. row.Cells.Where(c => RowTexts.Trimmed(c) is not null)];
        if (filled.Length == 0 || filled.Any(c => UnitOf(c) is null))
            return null;
        Dictionary<int, string> units = filled.ToDictionary(c => c.Column, c => UnitOf(c)!);
        // A group may be called 'A' or 'C', which are units too: a row of units has one under a column of numbers.
        bool overNumbers = columns.Any(c => c.Meaning is ColumnMeaning.Reading or ColumnMeaning.ReadyMade or ColumnMeaning.ReadingValue
            && units.ContainsKey(c.Column));
        return overNumbers
            ? [.. columns.Select(c => c.Unit is null && units.TryGetValue(c.Column, out string? unit)
                ? new ColumnMatch(c.Heading, c.Column, c.Meaning, c.MatchedBy, unit)
                : c)]
            : null;
    }

    private static string? UnitOf(TableCell cell) => HeadingUnit.Named(NumberText.Trim(cell.Text).Trim("()[]/ "));
}
