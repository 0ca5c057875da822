namespace Calx.Practicals.Readings;

/// <summary>Takes the rows of a table with one row a group, or one a group and trial.</summary>
internal sealed class WideRows(TableIntake intake, IReadOnlyList<ColumnMatch> columns, ExpectedTable expected)
{
    private readonly Dictionary<int, ColumnMeaning> meanings = columns.ToDictionary(c => c.Column, c => c.Meaning);
    private readonly Dictionary<int, NumberExpectation> numbers = NumberColumns.Of(intake.Table, columns, expected);
    private readonly Dictionary<string, ExpectedColumn> byId = expected.Columns.ToDictionary(c => c.Id, StringComparer.Ordinal);
    private readonly bool hasTrial = columns.Any(c => c.Meaning is ColumnMeaning.Said { Kind: SaidOfGroup.Trial });
    private readonly GroupNaming naming = new(intake);

    /// <summary>Takes all rows from an index on.</summary>
    public void Take(int firstRow)
    {
        for (int i = firstRow; i < intake.Table.Rows.Count; i++)
            TakeRow(intake.Table.Rows[i]);
        naming.Tell();
    }

    private void TakeRow(CellRow row)
    {
        string? Said(SaidOfGroup kind) => RowTexts.Said(row, meanings, kind);
        if (RowTexts.RepeatsHeadings(row, intake, meanings))
        {
            intake.Note(intake.Texts.HeadingsAgain, intake.At(row.Number, row.Cells[0].Column));
            return;
        }
        bool summary = GroupNaming.IsSummary(Said(SaidOfGroup.Group));
        int rejectedBefore = intake.Rejected.Count;
        List<RawReading> readings = Readings(row, summary);
        bool empty = readings.Count == 0 && intake.Rejected.Count == rejectedBefore;
        if (empty || summary)
        {
            TellEmpty(row, Said(SaidOfGroup.Group), summary);
            return;
        }
        string? trial = Said(SaidOfGroup.Trial);
        string name = naming.Name(Said(SaidOfGroup.Group), hasTrial && trial is not null, row.Number);
        RawGroup group = new(name, trial, row.Number);
        group.Readings.AddRange(readings);
        RowTexts.Remarks(row, meanings, group);
        intake.Groups.Add(group);
    }

    private List<RawReading> Readings(CellRow row, bool summary)
    {
        List<RawReading> readings = [];
        foreach (TableCell cell in row.Cells)
        {
            if (!numbers.TryGetValue(cell.Column, out NumberExpectation? expectation))
                continue;
            NumberCell number = NumberText.Read(cell.Text, expectation, intake.Language);
            if (number is NumberCell.Number read && !summary)
                readings.Add(Reading(meanings[cell.Column], read, cell, row.Number));
            else if (number is NumberCell.Rejected rejected)
                intake.Reject(row.Number, cell, rejected.Reason);
            else if (number is NumberCell.Number)
                intake.Reject(row.Number, cell, intake.Texts.InSummaryRow);
        }
        return readings;
    }

    private RawReading Reading(ColumnMeaning meaning, NumberCell.Number number, TableCell cell, int row)
    {
        (string id, int occurrence) = meaning is ColumnMeaning.Reading reading
            ? (reading.BaseId, reading.Occurrence)
            : (((ColumnMeaning.ReadyMade)meaning).ColumnId, 1);
        return new RawReading(byId[id], occurrence, number, cell, intake.At(row, cell.Column));
    }

    private void TellEmpty(CellRow row, string? name, bool summary)
    {
        if (summary)
            intake.Note(intake.Texts.SummaryRow(name ?? string.Empty), intake.At(row.Number, row.Cells[0].Column));
        else if (RowTexts.AllSaid(row, meanings) is { Length: > 0 } said)
            intake.Note(intake.Texts.NoReadings(RowTexts.Short(string.Join(", ", said.Select(RowTexts.Trimmed)))),
                intake.At(row.Number, said[0].Column));
    }
}
