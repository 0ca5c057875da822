using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

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
    /// <param name="language">The language of notes and reasons; British where nothing else is said.</param>
    public static ClassReading Read(IReadOnlyList<CellTable> sheets, Practical practical, BalanceOptions? options = null, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(practical);
        ExpectedTable expected = ExpectedTable.Of(practical);
        if (practical.Series is null)
            return Read(sheets, expected, options, language);
        SeriesTable series = SeriesTable.Split(sheets, practical, language ?? EngineLanguage.British);
        return Read(series.Rest, expected, options, language) is var read && read is ClassReading.Taken taken
            ? new ClassReading.Taken(series.Attach(taken.Readings))
            : read;
    }

    /// <summary>Reads the first sheet that has a readable heading row.</summary>
    /// <param name="sheets">The sheets of a file in order.</param>
    /// <param name="expected">What the practical expects.</param>
    /// <param name="options">What the teacher says of the balances; null where nothing.</param>
    /// <param name="language">The language of notes and reasons; British where nothing else is said.</param>
    public static ClassReading Read(IReadOnlyList<CellTable> sheets, ExpectedTable expected, BalanceOptions? options = null, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(sheets);
        ArgumentNullException.ThrowIfNull(expected);
        EngineLanguage spoken = language ?? EngineLanguage.British;
        HeadingRowFinder finder = new(new HeadingLexicon(expected));
        (CellTable Table, HeadingRow Row)[] readable =
            [.. sheets.Select(sheet => (sheet, Row: finder.Find(sheet))).Where(s => s.Row is not null).Select(s => (s.sheet, s.Row!))];
        if (readable.Length == 0)
            return new ClassReading.Unreadable(NoHeading(sheets, expected, finder, spoken), null);
        (CellTable table, HeadingRow row) = readable[0];
        HeadingAssignment assignment = HeadingAssignment.Of(row.Cells, expected, spoken);
        if (assignment.Fault is HeadingFault fault)
            return new ClassReading.Unreadable(fault.Reason, new CellPosition(table.Sheet, table.Rows[row.Index].Number, fault.Column));
        TableReading reading = new(table, row, assignment.Columns, expected, finder, spoken);
        foreach (CellTable other in sheets.Where(sheet => sheet != table && sheet.Rows.Count > 0))
        {
            reading.Intake.Note(readable.Any(r => r.Table == other)
                ? reading.Intake.Texts.OtherSheet(other.Sheet) : reading.Intake.Texts.SheetNotRead(other.Sheet));
        }
        return new ClassReading.Taken(reading.Finish(options ?? BalanceOptions.NothingGiven));
    }

    private static string NoHeading(IReadOnlyList<CellTable> sheets, ExpectedTable expected, HeadingRowFinder finder, EngineLanguage language)
    {
        ClassFileTexts texts = new(language);
        Wording wording = new(language);
        if (sheets.All(sheet => sheet.Rows.Count == 0))
            return texts.NothingInTable;
        if (sheets.Any(finder.RunsDown))
            return texts.RunsDown;
        return texts.NoHeadingRow(wording.List([.. expected.Readings.Select(r => wording.Quoted($"{r.Label} / {r.Unit}"))]));
    }
}
