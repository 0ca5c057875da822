namespace Calx.Measurement.Distributions;

/// <summary>The arcsine (U-shaped) distribution of a quantity that swings sinusoidally between two limits with unknown
/// phase, such as a room's temperature (JCGM 101:2008, 6.4.6).</summary>
public sealed class ArcsineInput : InputDistribution
{
    private readonly double low;
    private readonly double width;

    /// <summary>States the law.</summary>
    /// <param name="low">Lower limit.</param>
    /// <param name="high">Upper limit, above the lower.</param>
    /// <exception cref="ArgumentException">A limit is not finite, or they are not in order.</exception>
    public ArcsineInput(double low, double high)
    {
        InputGuard.Rising(low, high);
        this.low = low;
        width = high - low;
    }

    /// <inheritdoc/>
    public override double Mean => low + (width / 2);

    /// <inheritdoc/>
    public override double StandardDeviation => width / Math.Sqrt(8);

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Mean + (width / 2 * Math.Cos(Math.PI * stream.NextDouble()));
    }
}
