using Calx.Measurement.Statistics.Series;

namespace Calx.Practicals.Definition;

/// <summary>
/// One reading of the balance taken again and again at planned times while something goes on: mass against time. The first and
/// the last of its points are ordinary readings of the practical; those between belong to the curve alone.
/// </summary>
public sealed class SeriesDefinition
{
    /// <summary>In min; the reaction has all the time it wants where everything is ideal.</summary>
    internal const double Forever = 1e9;

    /// <summary>Its name for people: <c>Mass</c>.</summary>
    public required string Label { get; init; }

    /// <summary>Id of the reading at time 0.</summary>
    public required string From { get; init; }

    /// <summary>Id of the reading at the last planned time.</summary>
    public required string To { get; init; }

    /// <summary>Id of the column in which teachers keep the mass lost up to the last time, or null.</summary>
    public string? LostColumn { get; init; }

    /// <summary>Name that stands in formulas of the procedure for the minutes since the first point.</summary>
    public required string Elapsed { get; init; }

    /// <summary>In min, from the first point.</summary>
    public required double EveryInMinutes { get; init; }

    /// <summary>In min, from the first point.</summary>
    public required double UntilInMinutes { get; init; }

    /// <summary>Whether times are written in seconds on the sheet.</summary>
    public required bool InSeconds { get; init; }

    /// <summary>What happens before the readings follow the curve.</summary>
    public required CurveStart Start { get; init; }

    /// <summary>The order that the reaction has in this practical.</summary>
    public required KineticOrder Order { get; init; }

    /// <summary>How readings near in time scatter together, or null where each scatters by itself.</summary>
    public required SeriesScatter? Scatter { get; init; }

    /// <summary>What the curve gives.</summary>
    public required IReadOnlyList<CurveQuantityDefinition> Quantities { get; init; }

    /// <summary>Other headings of it.</summary>
    public required IReadOnlyList<string> Aliases { get; init; }

    /// <summary>Where it stands in the file.</summary>
    public required FilePosition At { get; init; }

    /// <summary>The planned times in min, 0 and the last among them.</summary>
    public IReadOnlyList<double> TimesInMinutes =>
        [.. Enumerable.Range(0, (int)Math.Round(UntilInMinutes / EveryInMinutes) + 1).Select(i => i * EveryInMinutes)];

    /// <summary>Unit of the times on the sheet.</summary>
    public string TimeUnit => InSeconds ? "s" : "min";

    /// <summary>Minutes in one unit of the sheet's times.</summary>
    public double MinutesInUnit => InSeconds ? 1.0 / 60 : 1;

    /// <summary>By which a point is kept among a group's readings: <c>point-0.5-min</c>.</summary>
    /// <param name="minutes">The time in min.</param>
    public string PointId(double minutes) => $"point-{TimeText(minutes)}-{TimeUnit}";

    /// <summary>Whether an id is that of a point between the first and the last.</summary>
    public bool IsPoint(string id) => TimesInMinutes.Skip(1).SkipLast(1).Any(t => PointId(t) == id);

    /// <summary>A time as it is written on the sheet, without its unit: <c>30</c>, <c>0.5</c>.</summary>
    /// <param name="minutes">The time in min.</param>
    public string TimeText(double minutes) =>
        Math.Round(minutes / MinutesInUnit, 4).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>How the points of a series scatter together.</summary>
/// <param name="DraughtInGrams">Standard deviation in g of what points near in time share.</param>
/// <param name="LastsInMinutes">The time in which that falls to 1/e.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record SeriesScatter(double DraughtInGrams, double LastsInMinutes, Provenance Provenance);

/// <summary>What a curve gives: its quantities. A closed set.</summary>
public enum CurveGives
{
    /// <summary>The mass lost in the end, in g.</summary>
    FinalLoss,

    /// <summary>The rate at which mass is lost at the start, in g over the unit of the times.</summary>
    RateAtStart,

    /// <summary>The time in which half of the loss goes by.</summary>
    HalfLife,

    /// <summary>Gas that stayed in the vessel, in g.</summary>
    GasHeldBack,

    /// <summary>The time from the first point to where the loss begins.</summary>
    Delay,
}

/// <summary>A quantity that a curve through the points gives.</summary>
/// <param name="Id">Its id, unique among the quantities and readings.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="Unit">Its unit, which follows from what it is and the unit of the times.</param>
/// <param name="Gives">Which of the curve's numbers it is.</param>
/// <param name="At">Where it stands in the file.</param>
public sealed record CurveQuantityDefinition(string Id, string Label, string Unit, CurveGives Gives, FilePosition At)
{
    /// <summary>The unit as it stands behind a number in a sentence.</summary>
    public string UnitBehind => " " + Unit;
}
