using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>A table with one row a point: group, time, mass. What else stands in it goes into one row a group.</summary>
internal sealed class LongSeries
{
    private readonly CellTable sheet;
    private readonly CellRow heading;
    private readonly SeriesDefinition series;
    private readonly Practical practical;
    private readonly Dictionary<string, Own> groups = new(StringComparer.OrdinalIgnoreCase);
    private readonly TableCell time;
    private readonly TableCell value;
    private readonly TableCell? name;

    private LongSeries(CellTable sheet, CellRow heading, Practical practical, TableCell time, TableCell value, EngineLanguage language)
    {
        (this.sheet, this.heading, this.practical, this.time, this.value) = (sheet, heading, practical, time, value);
        series = practical.Series!;
        name = heading.Cells.FirstOrDefault(c => IsWord(c, "reading", "quantity", "measurement", "what") && c != value);
        IsLoss = TimeHeading.IsLost(value.Text);
        foreach (CellRow row in sheet.Rows.Where(r => r.Number > heading.Number))
        {
            Take(row, language);
        }
    }

    /// <summary>Points by the row in which their group begins.</summary>
    public IEnumerable<(int Row, List<SeriesPoint> Points)> Points => groups.Values.Select(g => (g.Row, g.Points));

    /// <summary>The two columns of the points.</summary>
    public IReadOnlyList<ColumnMatch> Columns =>
    [
        new(time.Text, time.Column, new ColumnMeaning.Said(SaidOfGroup.Time), MatchedBy.Alias),
        new(value.Text, value.Column, new ColumnMeaning.Point(series.TimeUnit), MatchedBy.Alias),
    ];

    /// <summary>Cells that are no number.</summary>
    public List<RejectedCell> Rejected { get; } = [];

    /// <summary>Whether the numbers are masses lost.</summary>
    public bool IsLoss { get; }

    /// <summary>Finds such a table in a sheet, or null.</summary>
    public static LongSeries? Of(CellTable sheet, Practical practical, EngineLanguage language)
    {
        foreach (CellRow row in sheet.Rows.Take(HeadingRowFinder.RowsLookedAt))
        {
            TableCell? time = row.Cells.FirstOrDefault(c => TimeHeading.UnitOf(c.Text, 1) is not null);
            TableCell? value = time is null ? null
                : row.Cells.FirstOrDefault(c => IsWord(c, "value", "result"))
                    ?? row.Cells.FirstOrDefault(c => c != time && IsMass(c.Text, practical.Series!));
            if (value is not null && row.Cells.Count > 2)
            {
                return new LongSeries(sheet, row, practical, time!, value, language);
            }
        }

        return null;
    }

    /// <summary>One row a group of what is no point, with its first and last point.</summary>
    /// <param name="endLabel">Heading of the last point; null leaves it out.</param>
    public CellTable Rest(string? endLabel)
    {
        List<string> added = [.. groups.Values.SelectMany(g => g.Named.Keys).Distinct(StringComparer.OrdinalIgnoreCase)];
        int next = Math.Max(heading.Cells.Max(c => c.Column), sheet.Rows.Max(r => r.Cells.Count == 0 ? 0 : r.Cells[^1].Column)) + 1;
        string? startLabel = IsLoss ? null : practical.Reading(series.From).Label;
        List<CellRow> rows = [new CellRow(heading.Number,
        [
            .. heading.Cells.Where(IsOther),
            .. added.Select((text, i) => new TableCell(next + i, text)),
            .. Cell(next + added.Count, startLabel is null ? null : $"{startLabel} / g"),
            .. Cell(next + added.Count + 1, endLabel is null ? null : $"{endLabel} / g"),
        ])];
        rows.AddRange(groups.Values.OrderBy(g => g.Row).Select(own => new CellRow(own.Row,
        [
            .. own.Others.Values.OrderBy(c => c.Column),
            .. added.Select((text, i) => own.Named.TryGetValue(text, out string? said) ? new TableCell(next + i, said) : null).OfType<TableCell>(),
            .. Cell(next + added.Count, startLabel is null ? null : At(own, minutes => minutes == 0)),
            .. Cell(next + added.Count + 1, endLabel is null ? null
                : At(own, minutes => (double)minutes >= series.UntilInMinutes - (series.EveryInMinutes / 2))),
        ])));
        return new CellTable(sheet.Sheet, [.. sheet.Rows.Where(r => r.Number < heading.Number), .. rows]);
    }

    private static IEnumerable<TableCell> Cell(int column, string? text) => text is null ? [] : [new TableCell(column, text)];

    private static bool IsWord(TableCell cell, params ReadOnlySpan<string> words)
    {
        string text = HeadingUnit.Split(cell.Text).Text.Trim();
        foreach (string word in words)
        {
            if (text.Equals(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsMass(string text, SeriesDefinition series)
    {
        string bare = HeadingUnit.Split(text).Text.Trim();
        return TimeHeading.IsLost(bare) || bare.Equals("mass", StringComparison.OrdinalIgnoreCase)
            || bare.Equals(series.Label, StringComparison.OrdinalIgnoreCase)
            || series.Aliases.Contains(bare, StringComparer.OrdinalIgnoreCase);
    }

    private bool IsOther(TableCell cell) => cell.Column != time.Column && cell.Column != value.Column && cell.Column != name?.Column;

    private void Take(CellRow row, EngineLanguage language)
    {
        string? Text(TableCell? of) => of is null || row.Cells.FirstOrDefault(c => c.Column == of.Column) is not TableCell cell
            || NumberText.Trim(cell.Text).IsEmpty ? null : NumberText.Trim(cell.Text).ToString();
        TableCell? group = heading.Cells.FirstOrDefault(IsOther);
        TableCell? trial = heading.Cells.FirstOrDefault(c => IsWord(c, "trial", "run", "repeat"));
        if (Text(group) is not string named)
        {
            return;
        }

        string key = named + "\0" + Text(trial);
        if (!groups.TryGetValue(key, out Own? own))
        {
            groups[key] = own = new Own(row.Number);
        }

        foreach (TableCell cell in row.Cells.Where(IsOther))
        {
            own.Others.TryAdd(cell.Column, cell);
        }

        if (Text(time) is string when)
        {
            TakePoint(own, row, when, language);
        }
        else if (name is not null && Text(name) is string reading && Text(value) is string written)
        {
            own.Named.TryAdd(reading, written);
        }
    }

    private void TakePoint(Own own, CellRow row, string when, EngineLanguage language)
    {
        decimal usual = series.InSeconds ? 1m / 60 : 1;
        if (TimeHeading.Alone(when, TimeHeading.UnitOf(time.Text, usual)!.Value) is not decimal minutes)
        {
            Rejected.Add(new RejectedCell(new CellPosition(sheet.Sheet, row.Number, time.Column), time.Text.Trim(), when, new ClassFileTexts(language).NotATime));
            return;
        }

        if (row.Cells.FirstOrDefault(c => c.Column == value.Column) is not TableCell cell)
        {
            return;
        }

        var at = new CellPosition(sheet.Sheet, row.Number, cell.Column);
        switch (NumberText.Read(cell.Text, new NumberExpectation("g", HeadingUnit.Split(value.Text).Unit, mayBeNegative: IsLoss), language))
        {
            case NumberCell.Number read:
                own.Points.Add(new SeriesPoint(SeriesTable.TimeOf(minutes, series), read.Value, at));
                own.Minutes.Add(minutes);
                break;
            case NumberCell.Rejected bad:
                Rejected.Add(new RejectedCell(at, value.Text.Trim(), cell.Text, bad.Reason));
                break;
            default:
                break;
        }
    }

    private static string? At(Own own, Func<decimal, bool> fits)
    {
        int at = own.Minutes.FindIndex(m => fits(m));
        return at < 0 ? null : own.Points[at].Value.ToString();
    }

    /// <summary>What one group has.</summary>
    private sealed class Own(int row)
    {
        public int Row { get; } = row;

        public List<SeriesPoint> Points { get; } = [];

        public List<decimal> Minutes { get; } = [];

        public Dictionary<int, TableCell> Others { get; } = [];

        public Dictionary<string, string> Named { get; } = new(StringComparer.OrdinalIgnoreCase);
    }
}
