using Calx.Practicals.Definition;

namespace Calx.Practicals.Readings;

/// <summary>
/// Reads a class's table of weighings as teachers keep it: one row a group, one a group and trial, or one a reading;
/// titles above, means below, headings in the teacher's own words. What cannot be taken is named and the rest kept.
/// </summary>
public static class ClassTableReader
{
    /// <summary>Reads a class's table for a practical.</summary>
    /// <param name="sheets">The sheets of a file in order; the first that has a readable heading row is read.</param>
    /// <param name="practical">The practical.</param>
    /// <param name="options">What the teacher says of the balances; null where nothing.</param>
    public static ClassReading Read(IReadOnlyList<CellTable> sheets, Practical practical, BalanceOptions? options = null) =>
        Read(sheets, ExpectedTable.Of(practical), options);

    /// <summary>Reads the first sheet that has a readable heading row.</summary>
    /// <param name="sheets">The sheets of a file in order.</param>
    /// <param name="expected">What the practical expects.</param>
    /// <param name="options">What the teacher says of the balances; null where nothing.</param>
    public static ClassReading Read(IReadOnlyList<CellTable> sheets, ExpectedTable expected, BalanceOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(expected);
        HeadingRowFinder finder = new(new HeadingLexicon(expected));
        (CellTable Table, HeadingRow Row)[] readable =
            [.. sheets.Select(sheet => (sheet, Row: finder.Find(sheet))).Where(s => s.Row is not null).Select(s => (s.sheet, s.Row!))];
        if (readable.Length == 0)
            return new ClassReading.Unreadable(NoHeading(sheets, expected, finder), null);
        (CellTable table, HeadingRow row) = readable[0];
        HeadingAssignment assignment = HeadingAssignment.Of(row.Cells, expected);
        if (assignment.Fault is HeadingFault fault)
            return new ClassReading.Unreadable(fault.Reason, new CellPosition(table.Sheet, table.Rows[row.Index].Number, fault.Column));
        TableReading reading = new(table, row, assignment.Columns, expected, finder);
        foreach (CellTable other in sheets.Where(sheet => sheet != table && sheet.Rows.Count > 0))
        {
            string also = readable.Any(r => r.Table == other) ? "also has a heading row with readings; it" : "";
            reading.Intake.Note($"sheet '{other.Sheet}' {also} was not read".Replace("  ", " ", StringComparison.Ordinal));
        }
        return new ClassReading.Taken(reading.Finish(options ?? BalanceOptions.NothingGiven));
    }

    private static string NoHeading(IReadOnlyList<CellTable> sheets, ExpectedTable expected, HeadingRowFinder finder)
    {
        if (sheets.All(sheet => sheet.Rows.Count == 0))
            return "there is nothing in the table";
        if (sheets.Any(finder.RunsDown))
            return "the readings are named down the first column; put one group a row (copy, paste special, transpose)";
        string headings = string.Join(", ", expected.Readings.Select(r => $"'{r.Label} / {r.Unit}'"));
        return $"no heading row found that names readings of this practical, such as 'Group', {headings}";
    }
}
