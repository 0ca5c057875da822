namespace Calx.Practicals.Readings;

/// <summary>
/// Finds the last digit that each column was read to, gives back the zeros that a General format drops, and names
/// readings written with other decimals than their column.
/// </summary>
internal sealed class Resolution
{
    // From ten readings on, one alone with more decimals than all the others is asked about: it sets the resolution. That a
    // format hid a zero at the end of each of the others has one chance in a thousand million.
    private const int EnoughToAsk = 10;

    // A column of six readings that all end in a zero has one chance in a million: its balance shows a digit less.
    private const int EnoughToTrust = 6;

    // More notes of one kind in a column than this are told as one.
    private const int NotesEach = 3;

    private readonly TableIntake intake;
    private readonly Dictionary<(string Id, string Balance), decimal> steps = [];
    private readonly Dictionary<(string Id, string Balance), List<RawReading>> byColumn = [];

    public Resolution(TableIntake intake)
    {
        this.intake = intake;
        foreach (RawGroup group in intake.Groups)
        {
            foreach (RawReading reading in group.Readings)
            {
                if (!byColumn.TryGetValue(Key(group, reading), out List<RawReading>? readings))
                    byColumn[Key(group, reading)] = readings = [];
                readings.Add(reading);
            }
        }
        foreach (var column in byColumn)
            steps[column.Key] = Finest(column.Value);
        WidenGeneral();
        foreach (var column in byColumn)
            Tell(column.Value, steps[column.Key]);
    }

    /// <summary>The step of the last digit by base id of the readings; of the ready-made masses where there are no
    /// readings.</summary>
    public IReadOnlyDictionary<string, decimal> ByReading()
    {
        ILookup<string, decimal> weighings = Steps(reading => reading.Column.Kind == ExpectedKind.Weighing);
        ILookup<string, decimal> found = weighings.Count > 0
            ? weighings
            : Steps(reading => reading.Column is { Kind: ExpectedKind.Tared or ExpectedKind.Difference, Unit: "g" });
        return found.ToDictionary(column => column.Key, column => column.Min(), StringComparer.Ordinal);
    }

    /// <summary>The same of readings that are no weighings. A scale that goes by halves is read to a decimal: where all numbers lie
    /// on its steps it is taken at its word, otherwise the digits are.</summary>
    public IReadOnlyDictionary<string, decimal> ByGauge() => byColumn.Where(c => c.Value[0].Column.Kind == ExpectedKind.Gauge)
        .GroupBy(c => c.Key.Id, StringComparer.Ordinal)
        .ToDictionary(column => column.Key, column => StepOf([.. column.SelectMany(c => c.Value)], column.Min(c => steps[c.Key])), StringComparer.Ordinal);

    private static decimal StepOf(RawReading[] readings, decimal written) =>
        readings[0].Column.Limits.Step is decimal step && step > written && readings.All(r => r.Value.Value % step == 0) ? step : written;

    /// <summary>The number with the zeros that its format dropped.</summary>
    public (Calx.Measurement.Numbers.WrittenNumber Value, decimal LastDigit) Padded(RawGroup group, RawReading reading)
    {
        decimal step = steps[Key(group, reading)];
        return reading.Written.DecimalsShown || reading.LastDigit <= step
            ? (reading.Value, reading.LastDigit)
            : (new Calx.Measurement.Numbers.WrittenNumber(reading.Value.Value + 0m * step), step);
    }

    private static (string Id, string Balance) Key(RawGroup group, RawReading reading) =>
        (reading.Column.Id, group.First(SaidOfGroup.Balance) ?? "");

    private static decimal Finest(List<RawReading> readings) => readings.Min(r => r.LastDigit);

    // Under a General format '15.1' may have been 15.10: the other weighings on the same balance tell.
    private void WidenGeneral()
    {
        foreach (var balance in byColumn.Where(c => c.Value[0].Column.Kind == ExpectedKind.Weighing).GroupBy(c => c.Key.Balance).ToList())
        {
            decimal finest = balance.Min(c => steps[c.Key]);
            foreach (var column in balance.Where(c => c.Value.Count < EnoughToTrust && c.Value.All(r => !r.Written.DecimalsShown)))
                steps[column.Key] = finest;
        }
    }

    private ILookup<string, decimal> Steps(Func<RawReading, bool> wanted) => byColumn
        .Where(column => wanted(column.Value[0]))
        .ToLookup(column => column.Key.Id, column => steps[column.Key], StringComparer.Ordinal);

    private void Tell(List<RawReading> readings, decimal step)
    {
        RawReading[] finest = [.. readings.Where(r => r.LastDigit == step)];
        if (readings.Count >= EnoughToAsk && finest.Length == 1)
        {
            intake.Note(intake.Texts.AloneFiner(finest[0].Written.Text.Trim()), finest[0].Cell);
            return;
        }

        TellFewer([.. readings.Where(r => r.LastDigit > step && r.Written.DecimalsShown && IsDecimal(r.LastDigit))]);
    }

    // A time written in minutes has steps of sixty seconds: no zero was dropped.
    private static bool IsDecimal(decimal lastDigit) => lastDigit is 1 or < 1 || lastDigit % 10 == 0 && lastDigit % 60 != 0;

    private void TellFewer(RawReading[] odd)
    {
        foreach (RawReading reading in odd.Take(odd.Length <= NotesEach ? NotesEach : 0))
            intake.Note(intake.Texts.FewerDecimals(reading.Written.Text.Trim()), reading.Cell);
        if (odd.Length > NotesEach)
            intake.Note(intake.Texts.SomeFewerDecimals(odd[0].Cell.ColumnLetter, GroupNaming.Rows([.. odd.Select(r => r.Cell.Row)], intake)));
    }
}
