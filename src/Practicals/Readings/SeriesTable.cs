using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Readings;

/// <summary>
/// Takes the points of mass against time out of a class's table, so that what is left is a table of ordinary readings: with a
/// column for each time, or with a row for each point.
/// </summary>
internal sealed class SeriesTable
{
    private readonly Dictionary<int, List<SeriesPoint>> points = [];
    private readonly List<ColumnMatch> columns = [];
    private readonly List<RejectedCell> rejected = [];
    private readonly SeriesDefinition series;
    private readonly Practical practical;
    private readonly EngineLanguage language;

    private SeriesTable(Practical practical, EngineLanguage language)
    {
        (this.practical, this.language) = (practical, language);
        series = practical.Series!;
    }

    /// <summary>The table without the points between, its first and last point under their own headings.</summary>
    public IReadOnlyList<CellTable> Rest { get; private set; } = [];

    /// <summary>Whether the numbers are masses lost.</summary>
    public bool IsLoss { get; private set; }

    /// <summary>Takes the points out of the first sheet that has any.</summary>
    public static SeriesTable Split(IReadOnlyList<CellTable> sheets, Practical practical, EngineLanguage language)
    {
        var table = new SeriesTable(practical, language);
        List<CellTable> rest = [.. sheets];
        for (int i = 0; i < rest.Count; i++)
        {
            if ((table.Wide(rest[i]) ?? table.Long(rest[i])) is CellTable taken)
            {
                rest[i] = taken;
                break;
            }
        }

        table.Rest = rest;
        return table;
    }

    /// <summary>The class's readings with each group's points.</summary>
    public ClassReadings Attach(ClassReadings read) => new(
        read.PracticalId,
        [.. read.Groups.Select(With)],
        read.Balance,
        [.. read.Columns.Concat(columns).OrderBy(c => c.Column)],
        [.. read.Rejected.Concat(rejected).OrderBy(r => r.Cell.Row).ThenBy(r => r.Cell.Column)],
        read.Notes,
        read.Sheet,
        read.IsSimulated,
        read.Uncounted);

    private GroupReadings With(GroupReadings group) => new(
        group.Name,
        group.Trial,
        group.Readings,
        group.DerivedColumns,
        group.Remarks,
        group.Row,
        new GroupSeries(points.GetValueOrDefault(group.Row ?? 0) ?? [], IsLoss).With(Ends(series, group.Readings)));

    /// <summary>The first and last reading of a group as points of its series.</summary>
    internal static IEnumerable<SeriesPoint> Ends(SeriesDefinition series, IReadOnlyList<TakenReading> readings)
    {
        foreach ((string id, double minutes) in new[] { (series.From, 0.0), (series.To, series.UntilInMinutes) })
        {
            if (readings.FirstOrDefault(r => r.Id == id) is TakenReading taken)
            {
                yield return new SeriesPoint(TimeOf((decimal)minutes, series), taken.Value, taken.Cell);
            }
        }
    }

    internal static WrittenNumber TimeOf(decimal minutes, SeriesDefinition series)
    {
        decimal time = decimal.Round(series.InSeconds ? minutes * 60 : minutes, 6);
        return new WrittenNumber(time / 1.000000000000000000000000000000000m);
    }

    private CellTable? Wide(CellTable sheet)
    {
        CellRow? heading = sheet.Rows.Take(HeadingRowFinder.RowsLookedAt).FirstOrDefault(row => Times(row).Count >= TimeSeriesFewest);
        if (heading is null)
        {
            return null;
        }

        Dictionary<int, TimeHeading> times = Times(heading);
        IsLoss = times.Values.Count(t => t.IsLoss) * 2 > times.Count;
        foreach (CellRow row in sheet.Rows.Where(r => r.Number > heading.Number))
        {
            List<SeriesPoint> own = points[row.Number] = [];
            foreach (TableCell cell in row.Cells.Where(c => times.ContainsKey(c.Column)))
            {
                TakePoint(own, times[cell.Column].Minutes, times[cell.Column].Unit, cell, new CellPosition(sheet.Sheet, row.Number, cell.Column), TextOf(heading, cell.Column));
            }
        }

        int? first = IsLoss ? null : Column(times, t => t.Minutes == 0);
        int? last = Column(times, t => Math.Abs((double)t.Minutes - series.UntilInMinutes) <= series.EveryInMinutes / 2);
        columns.AddRange(times.Where(t => t.Key != first && t.Key != last).Select(t => new ColumnMatch(
            TextOf(heading, t.Key), t.Key, new ColumnMeaning.Point(series.TimeText((double)t.Value.Minutes) + " " + series.TimeUnit), MatchedBy.Alias, t.Value.Unit)));
        return new CellTable(sheet.Sheet, [.. sheet.Rows.Select(row => new CellRow(row.Number, [.. row.Cells.Select(Kept).OfType<TableCell>()]))]);

        TableCell? Kept(TableCell cell)
        {
            if (!times.TryGetValue(cell.Column, out TimeHeading? time))
            {
                return cell;
            }

            string? name = cell.Column == first ? LabelOf(series.From) : cell.Column == last ? EndLabel() : null;
            // What is no number has been rejected as a point, once.
            return name is null ? null
                : TextOf(heading, cell.Column) == cell.Text ? new TableCell(cell.Column, $"{name} / {time.Unit ?? "g"}")
                : NumberText.Read(cell.Text, new NumberExpectation("g", time.Unit), language) is NumberCell.Rejected ? null
                : cell;
        }
    }

    private const int TimeSeriesFewest = Measurement.Statistics.Series.TimeSeries.FewestReadings;

    private static Dictionary<int, TimeHeading> Times(CellRow row)
    {
        var found = new Dictionary<int, TimeHeading>();
        foreach (TableCell cell in row.Cells)
        {
            if (TimeHeading.Of(cell.Text) is TimeHeading time)
            {
                found[cell.Column] = time;
            }
        }

        // 'Time / s' before bare numbers.
        if (found.Count < TimeSeriesFewest && row.Cells.FirstOrDefault(c => TimeHeading.UnitOf(c.Text, 0) > 0) is TableCell said)
        {
            decimal unit = TimeHeading.UnitOf(said.Text, 0)!.Value;
            foreach (TableCell cell in row.Cells.Where(c => c.Column > said.Column))
            {
                if (NumberText.Read(cell.Text, new NumberExpectation("1", "1")) is NumberCell.Number number)
                {
                    found[cell.Column] = new TimeHeading(decimal.Round(number.Value.Value * unit, 8), false, null);
                }
            }
        }

        return found;
    }

    private static int? Column(Dictionary<int, TimeHeading> times, Func<TimeHeading, bool> fits) =>
        times.Where(t => fits(t.Value)).Select(t => (int?)t.Key).FirstOrDefault();

    private static string TextOf(CellRow row, int column) => row.Cells.FirstOrDefault(c => c.Column == column)?.Text ?? string.Empty;

    private string LabelOf(string reading) => practical.Reading(reading).Label;

    private string? EndLabel() => !IsLoss ? LabelOf(series.To)
        : series.LostColumn is string lost ? practical.FindColumn(lost)!.Label : null;

    private CellTable? Long(CellTable sheet)
    {
        if (LongSeries.Of(sheet, practical, language) is not LongSeries found)
        {
            return null;
        }

        IsLoss = found.IsLoss;
        columns.AddRange(found.Columns);
        rejected.AddRange(found.Rejected);
        foreach ((int row, List<SeriesPoint> own) in found.Points)
        {
            points[row] = own;
        }

        return found.Rest(EndLabel());
    }

    private void TakePoint(List<SeriesPoint> own, decimal minutes, string? unit, TableCell cell, CellPosition at, string heading)
    {
        NumberCell number = NumberText.Read(cell.Text, new NumberExpectation("g", unit, mayBeNegative: IsLoss), language);
        if (number is NumberCell.Number read)
        {
            own.Add(new SeriesPoint(TimeOf(minutes, series), read.Value, at));
        }
        else if (number is NumberCell.Rejected bad && !cell.Text.Equals(heading, StringComparison.Ordinal))
        {
            rejected.Add(new RejectedCell(at, heading.Trim(), cell.Text, bad.Reason));
        }
    }
}
