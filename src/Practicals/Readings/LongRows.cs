namespace Calx.Practicals.Readings;

/// <summary>Takes the rows of a table with one row a reading: group, name of the reading, value.</summary>
internal sealed class LongRows
{
    private readonly TableIntake intake;
    private readonly HeadingRowFinder finder;
    private readonly Dictionary<int, ColumnMeaning> meanings;
    private readonly string? valueUnit;
    private readonly bool points;
    private readonly GroupNaming naming;
    private readonly Dictionary<string, RawGroup> groups = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, HeadingCell> namesSeen = new(StringComparer.Ordinal);

    public LongRows(TableIntake intake, IReadOnlyList<ColumnMatch> columns, HeadingRowFinder finder)
    {
        this.intake = intake;
        this.finder = finder;
        meanings = columns.ToDictionary(c => c.Column, c => c.Meaning);
        ColumnMatch value = columns.First(c => c.Meaning is ColumnMeaning.ReadingValue);
        valueUnit = value.Unit;
        points = NumberColumns.PointsAround(intake.Table, new HashSet<int> { value.Column });
        naming = new GroupNaming(intake);
    }

    /// <summary>Takes all rows from an index on.</summary>
    public void Take(int firstRow)
    {
        for (int i = firstRow; i < intake.Table.Rows.Count; i++)
        {
            CellRow row = intake.Table.Rows[i];
            if (RowTexts.RepeatsHeadings(row, intake, meanings))
                intake.Note(intake.Texts.HeadingsAgain, intake.At(row.Number, row.Cells[0].Column));
            else
                TakeRow(row);
        }
        naming.Tell();
    }

    private void TakeRow(CellRow row)
    {
        TableCell? name = Cell<ColumnMeaning.ReadingName>(row);
        TableCell? value = Cell<ColumnMeaning.ReadingValue>(row);
        if (name is null && value is null)
        {
            if (RowTexts.AllSaid(row, meanings) is { Length: > 0 } said)
                intake.Note(intake.Texts.NoReading(RowTexts.Short(string.Join(", ", said.Select(RowTexts.Trimmed)))),
                    intake.At(row.Number, said[0].Column));
            return;
        }
        RawGroup group = GroupOf(row);
        RowTexts.Remarks(row, meanings, group);
        if (name is null)
            intake.Reject(row.Number, value!, intake.Texts.ReadingNotNamed);
        else if (Named(name, row.Number) is HeadingCandidate reading && value is not null)
            TakeValue(group, reading, namesSeen[name.Text].Words.Unit, value, row.Number);
        else if (value is not null)
            intake.Reject(row.Number, value, intake.Texts.ReadingNotKnown);
    }

    private TableCell? Cell<T>(CellRow row)
        where T : ColumnMeaning =>
        row.Cells.FirstOrDefault(c => meanings.GetValueOrDefault(c.Column) is T && RowTexts.Trimmed(c) is not null);

    private RawGroup GroupOf(CellRow row)
    {
        string? trial = RowTexts.Said(row, meanings, SaidOfGroup.Trial);
        string name = naming.Name(RowTexts.Said(row, meanings, SaidOfGroup.Group), true, row.Number);
        string key = name + "\0" + trial;
        if (!groups.TryGetValue(key, out RawGroup? group))
        {
            groups[key] = group = new RawGroup(name, trial, row.Number);
            intake.Groups.Add(group);
        }
        return group;
    }

    private HeadingCandidate? Named(TableCell name, int row)
    {
        if (!namesSeen.TryGetValue(name.Text, out HeadingCell? heading))
            namesSeen[name.Text] = heading = finder.ReadingNamed(name);
        HeadingCandidate[] readings = [.. heading.Best.Where(c => c.Target.Column is not null)];
        if (readings.Length == 1)
            return readings[0];
        intake.Reject(row, name, readings.Length == 0
            ? intake.Texts.NotOfPractical
            : intake.Texts.CouldBe(intake.Wording.AllOr([.. readings.Select(c => intake.Wording.Quoted(c.Target.Name))])));
        return null;
    }

    private void TakeValue(RawGroup group, HeadingCandidate reading, string? unit, TableCell value, int row)
    {
        ExpectedColumn column = reading.Target.Column!;
        NumberCell number = NumberText.Read(value.Text, NumberColumns.Of(column, unit ?? valueUnit, points), intake.Language);
        if (number is NumberCell.Rejected rejected)
            intake.Reject(row, value, rejected.Reason);
        if (number is not NumberCell.Number read)
            return;
        int occurrence = Occurrence(group, reading, column);
        if (occurrence > column.Repeats || group.Readings.Any(r => r.Column == column && r.Occurrence == occurrence))
            intake.Reject(row, value, intake.Texts.OneTooMany(column.Label));
        else
            group.Readings.Add(new RawReading(column, occurrence, read, value, intake.At(row, value.Column)));
    }

    private static int Occurrence(RawGroup group, HeadingCandidate reading, ExpectedColumn column)
    {
        if (reading.Number is int number)
            return reading.IsRepeat ? number + 1 : number;
        int taken = group.Readings.Count(r => r.Column == column);
        return reading.IsRepeat ? Math.Max(2, taken + 1) : taken + 1;
    }
}
