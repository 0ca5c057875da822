using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Series;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference;

/// <summary>Lays the practical's curve through a group's mass against time (docs/methods/series.md).</summary>
internal sealed class CurveRule
{
    /// <summary>One point more than the curve has numbers: fewer show a curve, but not whether points follow it.</summary>
    private const int FewestToSearch = 8;

    private readonly SeriesDefinition series;
    private readonly double resolution;
    private readonly double scatter;
    private readonly CurveSettings settings;
    private readonly SeriesTexts texts;

    /// <summary>Takes the practical's series.</summary>
    /// <param name="series">The series.</param>
    /// <param name="balance">The balance of the class.</param>
    /// <param name="language">The language of the sentences.</param>
    public CurveRule(SeriesDefinition series, BalanceReport balance, EngineLanguage language)
        : this(series, (double)balance.ResolutionInGrams, balance.RepeatabilityInGrams, language)
    {
    }

    /// <summary>Takes the practical's series.</summary>
    /// <param name="series">The series.</param>
    /// <param name="resolution">Step of the balance in g.</param>
    /// <param name="repeatability">Standard deviation of repeated weighings in g.</param>
    /// <param name="language">The language of the sentences.</param>
    public CurveRule(SeriesDefinition series, double resolution, double repeatability, EngineLanguage language)
    {
        this.series = series;
        this.resolution = resolution;
        scatter = repeatability;
        texts = new SeriesTexts(language);
        settings = new CurveSettings(Noise(series, repeatability), series.Start);
    }

    /// <summary>The settings of its fits.</summary>
    public CurveSettings Settings => settings;

    /// <summary>What a group's points show.</summary>
    public GroupCurve Of(GroupSeries? points)
    {
        switch (points is null ? null : Taken(points))
        {
            case null:
                return None(null, texts.NoPoints);
            case TimeSeriesResult.Faulty:
                return None(null, texts.TooFew(points!.Points.Count.InFigures(), TimeSeries.FewestReadings.InFigures()));
            case TimeSeriesResult.Series { Value: var taken }:
                return Of(taken);
            default:
                throw new InvalidOperationException("A series is taken or not.");
        }
    }

    private GroupCurve Of(TimeSeries taken)
    {
        IReadOnlyList<Disturbance> gross = Disturbances.Gross(taken, Math.Max(scatter, resolution));
        CurveSettings without = settings.Allowing(gross);
        IReadOnlyList<Disturbance> disturbed = taken.Values.Length >= FewestToSearch
            && Disturbances.Find(taken, series.Order, without) is DisturbanceResult.Searched searched
            ? [.. gross.Concat(searched.Found).OrderBy(d => d.First)] : gross;
        // A misread point is named and left out of the curve, a jump is given a size of its own; both are said.
        CurveSettings allowed = settings.Allowing(disturbed);
        return SeriesCurve.Fit(taken, series.Order, allowed) switch
        {
            CurveResult.Fitted { Curve: var curve } => new GroupCurve(
                taken, curve, null, [.. series.Quantities.Select(q => Found(q, curve))], OrderComparison.Of(taken, allowed), disturbed),
            CurveResult.NotDetermined not => None(taken, Sentence(not.Reason), disturbed),
            CurveResult.TooFewReadings few => None(taken, texts.TooFew(few.Readings.InFigures(), few.Needed.InFigures()), disturbed),
            _ => throw new InvalidOperationException("A curve is fitted or not."),
        };
    }

    private TimeSeriesResult Taken(GroupSeries points) => TimeSeries.From(
        [.. points.Points.Select(p => new TimedReading(p.Time, points.IsLoss ? new WrittenNumber(-p.Value.Value) : p.Value))], resolution);

    private static CurveQuantity Found(CurveQuantityDefinition quantity, FittedCurve curve)
    {
        SeriesQuantity found = Of(quantity.Gives, curve);
        CoverageInterval interval = found.Interval(0.95);
        // Nodes have a width: what cannot be below nothing may seem so by half of one.
        bool fromZero = quantity.Gives is CurveGives.GasHeldBack or CurveGives.Delay;
        return fromZero
            ? new CurveQuantity(quantity, Math.Max(0, found.Estimate), found.StandardUncertainty, new CoverageInterval(Math.Max(0, interval.Low), interval.High, 0.95), null)
            : new CurveQuantity(quantity, found.Estimate, found.StandardUncertainty, interval, null);
    }

    /// <summary>One of the numbers of a curve.</summary>
    internal static SeriesQuantity Of(CurveGives gives, FittedCurve curve) => gives switch
    {
        CurveGives.RateAtStart => curve.RateAtStart,
        CurveGives.HalfLife => curve.HalfLife,
        CurveGives.GasHeldBack => curve.HeldBack!,
        CurveGives.Delay => curve.Lag!,
        _ => curve.Loss,
    };

    private GroupCurve None(TimeSeries? taken, string reason, IReadOnlyList<Disturbance>? disturbed = null) => new(
            taken,
            null,
            reason,
            [.. series.Quantities.Select(q => new CurveQuantity(q, null, null, null, reason))],
            OrderVerdict.Without(reason),
            disturbed ?? []);

    private static string Sentence(string clause) => char.ToUpperInvariant(clause[0]) + clause[1..] + ".";

    /// <summary>
    /// How strong a draught was is left to the points themselves where the curve begins at once. A curve that begins later has so
    /// many numbers that a score of points cannot tell its start from a draught: there the balance and the practical say how they scatter.
    /// </summary>
    private static SeriesNoise Noise(SeriesDefinition series, double repeatability) => series switch
    {
        { Start: CurveStart.AtFirstReading, Scatter: null } => new SeriesNoise.Independent(),
        { Start: CurveStart.AtFirstReading } => new SeriesNoise.Correlated(),
        { Scatter: SeriesScatter scatter } =>
            new SeriesNoise.Known(repeatability, scatter.DraughtInGrams, scatter.LastsInMinutes / series.MinutesInUnit),
        _ => new SeriesNoise.Known(repeatability),
    };
}
