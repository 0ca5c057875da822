namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// Readings of one quantity over time, as written, for instance the mass of a flask every ten seconds. Times and readings
/// keep the units they were written in; rates are in the one over the other.
/// </summary>
public sealed class TimeSeries
{
    /// <summary>With fewer readings nothing can be said of a curve.</summary>
    public const int FewestReadings = 3;

    /// <summary>A reading every second for five and a half hours.</summary>
    public const int MostReadings = 20_000;

    private readonly double[] times;
    private readonly double[] values;

    private TimeSeries(TimedReading[] readings, double resolution)
    {
        Readings = readings;
        Resolution = resolution;
        times = [.. readings.Select(reading => reading.Time.AsDouble)];
        values = [.. readings.Select(reading => reading.Reading!.Value.AsDouble)];
    }

    /// <summary>The readings in order of time, those left out where nothing was read.</summary>
    public IReadOnlyList<TimedReading> Readings { get; }

    /// <summary>The step of the display, in the unit of the readings.</summary>
    public double Resolution { get; }

    /// <summary>The time of each reading.</summary>
    public ReadOnlySpan<double> Times => times;

    /// <summary>The readings as numbers.</summary>
    public ReadOnlySpan<double> Values => values;

    /// <summary>From the first reading to the last, in the unit of the times.</summary>
    public double Span => times[^1] - times[0];

    /// <summary>Takes readings whose resolution is the last decimal that any of them shows.</summary>
    public static TimeSeriesResult From(IReadOnlyList<TimedReading> readings)
    {
        ArgumentNullException.ThrowIfNull(readings);
        int decimals = readings.Select(reading => reading.Reading?.Decimals ?? 0).DefaultIfEmpty().Max();
        return From(readings, Math.Pow(10, -decimals));
    }

    /// <summary>Takes readings of a display whose step is known, for instance 0.02 or 0.5.</summary>
    /// <param name="readings">In order of time; a time without a reading is a gap and is left out.</param>
    /// <param name="resolution">The step of the display, in the unit of the readings.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resolution is not above 0.</exception>
    public static TimeSeriesResult From(IReadOnlyList<TimedReading> readings, double resolution)
    {
        ArgumentNullException.ThrowIfNull(readings);
        Require.Positive(resolution);
        TimedReading[] taken = [.. readings.Where(reading => reading.Reading is not null)];
        if (taken.Length is < FewestReadings or > MostReadings)
        {
            return new TimeSeriesResult.Faulty(
                null, $"a series has {FewestReadings} to {MostReadings} readings; this one has {taken.Length}");
        }

        for (int i = 1; i < readings.Count; i++)
        {
            if (readings[i].Time.Value <= readings[i - 1].Time.Value)
            {
                return new TimeSeriesResult.Faulty(
                    i, $"the time {readings[i].Time} does not come after {readings[i - 1].Time}");
            }
        }

        return new TimeSeriesResult.Series(new TimeSeries(taken, resolution));
    }
}

/// <summary>Whether readings make a series.</summary>
public abstract record TimeSeriesResult
{
    private TimeSeriesResult()
    {
    }

    /// <summary>They do.</summary>
    public sealed record Series : TimeSeriesResult
    {
        internal Series(TimeSeries value) => Value = value;

        /// <summary>The series.</summary>
        public TimeSeries Value { get; }
    }

    /// <summary>They do not.</summary>
    public sealed record Faulty : TimeSeriesResult
    {
        internal Faulty(int? place, string reason) => (Place, Reason) = (place, reason);

        /// <summary>Which line is to blame, from 0; null where it is the whole.</summary>
        public int? Place { get; }

        /// <summary>What is wrong, in a plain clause.</summary>
        public string Reason { get; }
    }
}
