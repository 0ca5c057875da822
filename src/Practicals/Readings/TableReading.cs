using Calx.Measurement.Numbers;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>Reads the rows below a heading row and puts the class's readings together.</summary>
internal sealed class TableReading
{
    private readonly ExpectedTable expected;
    private readonly bool isLong;
    private readonly bool saysSimulated;
    private readonly HashSet<string> isReading;
    private IReadOnlyList<ColumnMatch> columns;

    public TableReading(
        CellTable table, HeadingRow row, IReadOnlyList<ColumnMatch> matched, ExpectedTable expected, HeadingRowFinder finder, EngineLanguage language)
    {
        this.expected = expected;
        isLong = row.IsLong;
        saysSimulated = table.Rows.Take(row.Index).SelectMany(r => r.Cells).Any(SaysSimulated);
        isReading = [.. expected.Readings.Select(r => r.Id)];
        int first = row.Index + 1;
        columns = WithoutHeading.Added(matched, table, first, new ClassFileTexts(language).NoHeading);
        if (first < table.Rows.Count && UnitRow.Of(table.Rows[first], columns) is IReadOnlyList<ColumnMatch> withUnits)
            (columns, first) = (withUnits, first + 1);
        Intake = new TableIntake(table, columns.ToDictionary(c => c.Column, c => c.Heading), language);
        if (isLong)
            new LongRows(Intake, columns, finder).Take(first);
        else
            new WideRows(Intake, columns, expected).Take(first);
    }

    /// <summary>What has been read so far.</summary>
    public TableIntake Intake { get; }

    /// <summary>Sets aside what cannot be, settles decimals, and puts the groups together.</summary>
    public ClassReadings Finish(BalanceOptions options)
    {
        SetAside(Plausibility.Impossible(Intake.Groups, Intake.Texts));
        TellTwins();
        UnitDoubt.Tell(Intake);
        Resolution resolution = new(Intake);
        GroupReadings[] groups = [.. Intake.Groups.Select(group => Group(group, resolution))];
        bool isSimulated = saysSimulated || (groups.Length > 0 && groups.All(g => g.IsSimulated));
        return new ClassReadings(
            expected.PracticalId,
            isSimulated ? groups : [.. groups.Where(g => !g.IsSimulated)],
            new BalanceReport(options, resolution.ByReading(), resolution.ByGauge()),
            columns,
            [.. Intake.Rejected.OrderBy(r => r.Cell.Row).ThenBy(r => r.Cell.Column)],
            Intake.Notes,
            Intake.Table.Sheet,
            isSimulated,
            isSimulated ? [] : [.. groups.Where(g => g.IsSimulated).Select(g => new UncountedGroup.Simulated(g.Name)).Distinct()]);
    }

    /// <summary>A line above the table that begins so says of all of it that nobody measured it.</summary>
    private static bool SaysSimulated(TableCell cell) =>
        cell.Text.AsSpan().TrimStart(" #'\"").StartsWith("simulated", StringComparison.OrdinalIgnoreCase);

    private void SetAside(IReadOnlyDictionary<string, string> impossible)
    {
        if (impossible.Count == 0)
            return;
        foreach (RawGroup group in Intake.Groups)
        {
            foreach (RawReading reading in group.Readings.Where(r => isLong && impossible.ContainsKey(r.Id)))
                Intake.Reject(reading.Cell.Row, reading.Written, Intake.Texts.ImpossibleReading(reading.Column.Label, impossible[reading.Id]));
            group.Readings.RemoveAll(r => impossible.ContainsKey(r.Id));
        }
        foreach (ColumnMatch column in columns.Where(c => impossible.ContainsKey(c.Meaning.Word)).ToList())
            Ignore(column, impossible[column.Meaning.Word]);
        foreach (var reason in impossible.Where(_ => isLong))
            Intake.Note(Intake.Texts.ImpossibleReading(reason.Key, reason.Value));
    }

    private void Ignore(ColumnMatch column, string reason)
    {
        Intake.Rejected.RemoveAll(r => r.Cell.Column == column.Column);
        Intake.Note(Intake.Texts.ColumnNotUsed(column.ColumnLetter, column.Heading.Trim(), reason));
        columns = [.. columns.Select(c => c == column
            ? new ColumnMatch(c.Heading, c.Column, new ColumnMeaning.Ignored(reason), c.MatchedBy, c.Unit)
            : c)];
    }

    private void TellTwins()
    {
        foreach (var twins in Intake.Groups.GroupBy(g => (g.Name.ToUpperInvariant(), g.Trial?.ToUpperInvariant())).Where(g => g.Count() > 1))
        {
            RawGroup first = twins.First();
            (string name, string times) = (RowTexts.Short(first.Name), twins.Count().InFigures());
            string rows = GroupNaming.Rows([.. twins.Select(t => t.Row)], Intake);
            Intake.Note(first.Trial is null ? Intake.Texts.Twins(name, times, rows) : Intake.Texts.TwinTrials(name, first.Trial, times, rows));
        }
    }

    private GroupReadings Group(RawGroup group, Resolution resolution)
    {
        List<TakenReading> taken = [.. group.Readings
            .OrderBy(r => Order(r.Column)).ThenBy(r => r.Occurrence)
            .Select(r => Taken(group, r, resolution))];
        GroupRemarks remarks = new(
            group.First(SaidOfGroup.Arm),
            group.First(SaidOfGroup.Time),
            group.First(SaidOfGroup.Balance),
            group.Said.GetValueOrDefault(SaidOfGroup.Observations));
        return new GroupReadings(
            group.Name,
            group.Trial,
            [.. taken.Where(t => isReading.Contains(t.BaseId))],
            [.. taken.Where(t => !isReading.Contains(t.BaseId))],
            remarks,
            group.Row);
    }

    private static TakenReading Taken(RawGroup group, RawReading reading, Resolution resolution)
    {
        (WrittenNumber value, decimal lastDigit) = resolution.Padded(group, reading);
        return new TakenReading(
            reading.Column.Id,
            reading.Occurrence,
            value,
            reading.Column.Unit,
            NumberText.Trim(reading.Written.Text).ToString(),
            reading.Cell,
            group.First(SaidOfGroup.Balance),
            lastDigit);
    }

    private int Order(ExpectedColumn column)
    {
        int at = 0;
        while (expected.Columns[at] != column)
            at++;
        return at;
    }
}
