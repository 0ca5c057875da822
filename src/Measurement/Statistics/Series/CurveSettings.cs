namespace Calx.Measurement.Statistics.Series;

/// <summary>What is assumed of a series when a curve is fitted.</summary>
public sealed class CurveSettings
{
    /// <summary>Takes the assumptions.</summary>
    /// <param name="noise">How readings scatter.</param>
    /// <param name="start">What happens before the curve begins.</param>
    /// <param name="driftPerTime">Standard uncertainty of a steady drift of the display, in the unit of the readings over that
    /// of the times; 0 for none. The readings themselves hardly tell a drift from the curve's own tail, so it is given.</param>
    /// <param name="disturbances">Disturbances to be allowed for: readings left out of the curve, and jumps of unknown size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The drift is negative or not finite.</exception>
    public CurveSettings(
        SeriesNoise noise,
        CurveStart start = CurveStart.AtFirstReading,
        double driftPerTime = 0,
        IReadOnlyList<Disturbance>? disturbances = null)
    {
        ArgumentNullException.ThrowIfNull(noise);
        if (!(driftPerTime >= 0 && double.IsFinite(driftPerTime)))
        {
            throw new ArgumentOutOfRangeException(nameof(driftPerTime), driftPerTime, "A number of 0 or more is needed.");
        }

        (Noise, Start, DriftPerTime, Disturbances) = (noise, start, driftPerTime, disturbances ?? []);
    }

    /// <summary>How readings scatter.</summary>
    public SeriesNoise Noise { get; }

    /// <summary>What happens before the curve begins.</summary>
    public CurveStart Start { get; }

    /// <summary>Standard uncertainty of a steady drift.</summary>
    public double DriftPerTime { get; }

    /// <summary>Disturbances that are allowed for.</summary>
    public IReadOnlyList<Disturbance> Disturbances { get; }

    /// <summary>The same with other disturbances allowed for.</summary>
    public CurveSettings Allowing(IReadOnlyList<Disturbance> disturbances)
    {
        ArgumentNullException.ThrowIfNull(disturbances);
        return new CurveSettings(Noise, Start, DriftPerTime, disturbances);
    }
}
