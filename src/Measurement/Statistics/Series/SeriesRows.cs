namespace Calx.Measurement.Statistics.Series;

/// <summary>The readings that a curve is fitted to: times from the first reading on, readings less the first one, so that
/// their last digits are kept, and a column for each jump that is allowed for.</summary>
internal sealed class SeriesRows
{
    public SeriesRows(TimeSeries series, IReadOnlyList<Disturbance> disturbances)
    {
        bool[] aside = new bool[series.Values.Length];
        foreach (Disturbance disturbance in disturbances.Where(found => found is not Disturbance.Jump))
        {
            Array.Fill(aside, true, disturbance.First, disturbance.Last - disturbance.First + 1);
        }

        Places = [.. Enumerable.Range(0, aside.Length).Where(i => !aside[i])];
        double[] times = series.Times.ToArray();
        double[] values = series.Values.ToArray();
        Origin = values[0];
        Times = [.. Places.Select(i => times[i] - times[0])];
        Values = [.. Places.Select(i => values[i] - Origin)];
        Jumps = [.. disturbances.OfType<Disturbance.Jump>()
            .Select(jump => Places.Select(i => i >= jump.First ? 1.0 : 0).ToArray())
            .Where(column => column.Contains(0) && column.Contains(1))];
        Resolution = series.Resolution;
        double[] gaps = [.. Times.Skip(1).Zip(Times, (after, before) => after - before).Order()];
        MedianGap = gaps.Length > 0 ? gaps[gaps.Length / 2] : 0;
        LeastGap = gaps.Length > 0 ? gaps[0] : 0;
    }

    /// <summary>The place of each row in the series.</summary>
    public int[] Places { get; }

    public double[] Times { get; }

    public double[] Values { get; }

    public double Origin { get; }

    public double[][] Jumps { get; }

    public double Resolution { get; }

    public double MedianGap { get; }

    public double LeastGap { get; }

    public int Count => Times.Length;

    public double Span => Times[^1];

    /// <summary>Half-lives that are thought of: from half of the shortest gap to twenty times the span.</summary>
    public (double Low, double High) LogHalfLives => (Math.Log(LeastGap / 2), Math.Log(20 * Span));

    /// <summary>A lag is at most a quarter of the span.</summary>
    public double LongestLag => Span / 4;

    public double[] Gone(KineticOrder order, double lag, double halfLife)
    {
        var gone = new double[Count];
        for (int i = 0; i < gone.Length; i++)
        {
            gone[i] = CurveShape.Gone(order, Times[i] - lag, halfLife);
        }

        return gone;
    }
}
