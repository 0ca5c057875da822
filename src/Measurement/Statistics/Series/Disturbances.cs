namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// Looks for readings that do not follow the curve of the others: single ones, runs, and jumps. They are named; nothing is left
/// out unless the caller allows for them in <see cref="CurveSettings"/>, which says so.
/// </summary>
public static class Disturbances
{
    /// <summary>A disturbance is named when one as plain comes by chance in fewer than this share of quiet series.</summary>
    public const double Significance = 0.01;

    /// <summary>More disturbances than this are not a curve with disturbances.</summary>
    public const int Most = 10;

    /// <summary>With correlated noise every stretch is filtered by itself, so that a longer series takes too long.</summary>
    public const int MostCorrelatedReadings = 2000;

    /// <summary>Looks for them, the plainest first, each beside those found before.</summary>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static DisturbanceResult Find(TimeSeries series, KineticOrder order, CurveSettings settings)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(settings);
        if (settings.Noise is not SeriesNoise.Independent && series.Values.Length > MostCorrelatedReadings)
        {
            return new DisturbanceResult.NotSearched(
                $"with correlated noise at most {MostCorrelatedReadings} readings are searched, and these are {series.Values.Length}");
        }

        List<Disturbance> found = [.. settings.Disturbances];
        while (found.Count < Most + settings.Disturbances.Count)
        {
            var rows = new SeriesRows(series, found);
            CurveSettings now = settings.Allowing([.. found]);
            if (rows.Count < SeriesCurve.Needed(rows, now) + 2)
            {
                break;
            }

            var curve = new FittedCurve(series, order, now, rows, CurveNodes.Of(rows, order, now));
            if (new DisturbanceSearch(curve, rows).Plainest() is not { } next)
            {
                break;
            }

            Join(found, next);
        }

        return new DisturbanceResult.Searched([.. found.Except(settings.Disturbances).OrderBy(one => one.First)]);
    }

    /// <summary>
    /// Readings so far from both neighbours that no course of a change passes through them, as misread digits are: they would draw
    /// every curve to themselves, so that nothing else was seen. Where a change goes one way, the middle of three readings is the
    /// middle one in size; the first and the last have one neighbour only, and are held against the next gap as well.
    /// </summary>
    /// <param name="series">The series.</param>
    /// <param name="scatter">Standard deviation of a reading.</param>
    /// <exception cref="ArgumentOutOfRangeException">The scatter is not above 0.</exception>
    public static IReadOnlyList<Disturbance> Gross(TimeSeries series, double scatter)
    {
        ArgumentNullException.ThrowIfNull(series);
        Require.Positive(scatter);
        double[] values = [.. series.Values];
        double limit = FarOff * scatter;
        var found = new List<Disturbance>();
        for (int i = 1; i < values.Length - 1; i++)
        {
            double middle = Math.Max(Math.Min(values[i - 1], values[i + 1]), Math.Min(Math.Max(values[i - 1], values[i + 1]), values[i]));
            if (Math.Abs(values[i] - middle) > limit)
            {
                found.Add(new Disturbance.Spike(i, values[i] - middle, 0));
            }
        }

        // Two in a row accuse each other: the one beside a reading that is far off was measured by it.
        found.RemoveAll(one => found.Any(other => Math.Abs(other.First - one.First) == 1 && Math.Abs(other.Size) > Math.Abs(one.Size)));
        double last = values[^1] - values[^2];
        if (values.Length > 3 && !found.Any(one => one.First >= values.Length - 3)
            && Math.Abs(last) > limit + (2 * Math.Abs(values[^2] - values[^3])))
        {
            found.Add(new Disturbance.Spike(values.Length - 1, last, 0));
        }

        // A change that slows down so fast that its first gap has eight times its second is not shown by these readings anyhow.
        if (values.Length > 3 && !found.Any(one => one.First <= 2) && Math.Abs(values[0] - values[1]) > limit + (8 * Math.Abs(values[1] - values[2])))
        {
            found.Add(new Disturbance.Spike(0, values[0] - values[1], 0));
        }

        return [.. found.OrderBy(one => one.First)];
    }

    // Fifteen standard deviations: no draught, no lean on the bench.
    private const double FarOff = 15;

    // Neighbouring findings are one event: somebody leant on the bench, not always equally hard.
    private static void Join(List<Disturbance> found, Disturbance next)
    {
        if (next is not Disturbance.Jump)
        {
            foreach (Disturbance near in found.Where(one =>
                one is not Disturbance.Jump && one.First <= next.Last + 2 && next.First <= one.Last + 2).ToArray())
            {
                int first = Math.Min(near.First, next.First);
                int last = Math.Max(near.Last, next.Last);
                double size = ((near.Size * Length(near)) + (next.Size * Length(next))) / (Length(near) + Length(next));
                next = new Disturbance.Run(first, last, size, Math.Min(near.Probability, next.Probability));
                found.Remove(near);
            }
        }

        found.Add(next);
    }

    private static int Length(Disturbance one) => one.Last - one.First + 1;
}

/// <summary>What a search for disturbances came to.</summary>
public abstract record DisturbanceResult
{
    private DisturbanceResult()
    {
    }

    /// <summary>The series was searched.</summary>
    public sealed record Searched : DisturbanceResult
    {
        internal Searched(IReadOnlyList<Disturbance> found) => Found = found;

        /// <summary>What was found, in order of time; empty where nothing was.</summary>
        public IReadOnlyList<Disturbance> Found { get; }
    }

    /// <summary>It was not.</summary>
    public sealed record NotSearched : DisturbanceResult
    {
        internal NotSearched(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
