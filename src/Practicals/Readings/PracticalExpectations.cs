using Calx.Practicals.Definition;

namespace Calx.Practicals.Readings;

/// <summary>Draws from a practical what it expects of a class's table.</summary>
internal static class PracticalExpectations
{
    // A subtracted mass is told from a whole weighing only where the vessel is this much heavier than any sample.
    private const double VesselOutweighsSample = 3;

    public static ExpectedTable Of(Practical practical) => new(
        practical.Id,
        [.. practical.Readings.Select(r => Reading(practical, r)), .. practical.Columns.Select(c => Column(practical, c))],
        [.. practical.Parts.Select(p => p.Label)],
        MaterialNames(practical));

    private static ExpectedColumn Reading(Practical practical, ReadingDefinition reading)
    {
        bool weighing = reading.IsWeighing;
        ExpectedLimits limits = weighing
            ? new ExpectedLimits(
                Vessel(practical, reading, p => p.Mass.Low), Vessel(practical, reading, p => p.Mass.High), Lighter(practical, reading),
                mayLack: [.. LeftOff(practical, reading).Select(p => ((decimal)p.Mass.Low, (decimal)p.Mass.High))],
                mostInsideInGrams: practical.Limits.Unit == "g" ? (decimal)(VesselOutweighsSample * practical.Limits.LargestSample) : null)
            : new ExpectedLimits(mayBeNegative: reading.Unit is "°C", step: reading.Errors?.Step.Exact);
        return new ExpectedColumn(
            reading.Id, reading.Label, weighing ? ExpectedKind.Weighing : ExpectedKind.Gauge,
            reading.Aliases, reading.Unit, reading.Repeats, reading.RepeatLabel, limits);
    }

    private static IEnumerable<Part> LeftOff(Practical practical, ReadingDefinition reading) => practical.Parts.Where(p =>
        reading.Pan.Parts.Contains(p.Id) && practical.Faults.Any(f => f.Effect is FaultEffect.Off off && off.Part == p.Id));

    private static decimal? Vessel(Practical practical, ReadingDefinition reading, Func<Part, double> mass)
    {
        double sum = practical.Parts.Where(p => reading.Pan.Parts.Contains(p.Id)).Sum(mass);
        return sum > 0 ? (decimal)sum : null;
    }

    // The empty vessel is lighter than the same vessel with something in it. Other pairs of pans are left alone: what a
    // place holds differs from one reading to the next.
    private static string[] Lighter(Practical practical, ReadingDefinition full)
    {
        IReadOnlySet<string> loaded = LoadedReadings.Of(practical.Readings, practical.Procedure);
        return full.Pan.Minus is not null || !loaded.Contains(full.Id)
            ? []
            : [.. practical.Readings
                .Where(r => r is { Gauge: null, Pan: { Parts.Count: > 0, Minus: null } } && !loaded.Contains(r.Id))
                .Where(r => r.Pan.Parts.All(full.Pan.Parts.Contains))
                .Select(r => r.Id)];
    }

    private static ExpectedColumn Column(Practical practical, ColumnDefinition column)
    {
        Dictionary<string, double> signs = column.Stands.Names.Where(name => practical.Readings.Any(r => r.Id == name)).ToDictionary(
            name => name,
            name => column.Stands.Evaluate(other => other == name ? 1 : 0, _ => 0));
        ReadingDefinition? whole = practical.Readings.FirstOrDefault(r => signs.GetValueOrDefault(r.Id) > 0);
        ReadingDefinition? off = practical.Readings.FirstOrDefault(r => signs.GetValueOrDefault(r.Id) < 0);
        bool positive = column.Kind == ColumnKind.Tared
            || (whole is not null && off is not null && Lighter(practical, whole).Contains(off.Id));
        decimal? vessel = whole is null ? null : Vessel(practical, whole, p => p.Mass.Low);
        bool tellsApart = practical.Limits.Unit == "g" && (double)(vessel ?? 0) > VesselOutweighsSample * practical.Limits.LargestSample;
        return new ExpectedColumn(
            column.Id, column.Label, column.Kind == ColumnKind.Tared ? ExpectedKind.Tared : ExpectedKind.Difference,
            column.Aliases, column.Unit,
            limits: new ExpectedLimits(tellsApart ? vessel : null, mayBeNegative: !positive));
    }

    // Of several materials with one formula (the metal's oxide and its oxide film) the shortest name is the usual one.
    private static Dictionary<string, string> MaterialNames(Practical practical) => practical.Materials
        .Where(m => m is { Air: false, FormulaText: not null })
        .GroupBy(m => HeadingText.Fold(m.FormulaText!))
        .ToDictionary(same => same.Key, same => same.Select(m => m.Label).OrderBy(label => label.Length).First(), StringComparer.Ordinal);
}
