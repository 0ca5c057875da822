using System.Globalization;

namespace Calx.Measurement.Statistics.Series;

/// <summary>Readings that do not follow the curve the others follow. No test says why, and none is a reason to drop them.</summary>
public abstract record Disturbance
{
    private Disturbance(int first, int last, double size, double probability) =>
        (First, Last, Size, Probability) = (first, last, size, probability);

    /// <summary>The first reading concerned, counted from 0 in the series.</summary>
    public int First { get; }

    /// <summary>The last reading concerned.</summary>
    public int Last { get; }

    /// <summary>By how much they lie off, in the unit of the readings; the mean where there are several.</summary>
    public double Size { get; }

    /// <summary>The chance of a disturbance as plain as this anywhere in a series that has none.</summary>
    public double Probability { get; }

    /// <summary>What was seen, in a sentence for a teacher; it does not say why.</summary>
    /// <param name="series">The series it was found in.</param>
    public string Sentence(TimeSeries series)
    {
        ArgumentNullException.ThrowIfNull(series);
        IReadOnlyList<TimedReading> readings = series.Readings;
        string size = Math.Abs(Size).ToString($"F{Decimals(series)}", CultureInfo.InvariantCulture);
        string side = Size < 0 ? "below" : "above";
        return this switch
        {
            Spike => $"The reading at {readings[First].Time}, {readings[First].Reading}, lies {size} {side} the curve of the others.",
            Run => $"The readings from {readings[First].Time} to {readings[Last].Time} lie about {size} {side} the curve "
                + "of the others; those after are as before.",
            _ => $"From {readings[First].Time} on all readings lie {size} {side} the curve of those before.",
        };
    }

    private static int Decimals(TimeSeries series) => series.Readings.Max(reading => reading.Reading?.Decimals ?? 0);

    /// <summary>One reading lies off: a slip of the pen, a touch.</summary>
    public sealed record Spike : Disturbance
    {
        internal Spike(int place, double size, double probability)
            : base(place, place, size, probability)
        {
        }
    }

    /// <summary>Some readings in a row lie off and the next are as before: somebody leant on the bench, a draught.</summary>
    public sealed record Run : Disturbance
    {
        internal Run(int first, int last, double size, double probability)
            : base(first, last, size, probability)
        {
        }
    }

    /// <summary>All readings from one on lie off by the same: the flask was moved, something splashed out or was added.</summary>
    public sealed record Jump : Disturbance
    {
        internal Jump(int first, int last, double size, double probability)
            : base(first, last, size, probability)
        {
        }
    }
}
