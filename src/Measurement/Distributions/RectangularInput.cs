namespace Calx.Measurement.Distributions;

/// <summary>A rectangular distribution: only two limits are known (JCGM 101:2008, 6.4.2).</summary>
public sealed class RectangularInput : InputDistribution
{
    private readonly double low;
    private readonly double width;

    /// <summary>States the law.</summary>
    /// <param name="low">Lower limit.</param>
    /// <param name="high">Upper limit, above the lower.</param>
    /// <exception cref="ArgumentException">A limit is not finite, or they are not in order.</exception>
    public RectangularInput(double low, double high)
    {
        InputGuard.Rising(low, high);
        this.low = low;
        width = high - low;
    }

    /// <inheritdoc/>
    public override double Mean => low + (width / 2);

    /// <inheritdoc/>
    public override double StandardDeviation => width / Math.Sqrt(12);

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return low + (width * stream.NextDouble());
    }

    /// <inheritdoc/>
    public override void Fill(RandomStream stream, Span<double> values)
    {
        ArgumentNullException.ThrowIfNull(stream);
        stream.Fill(values);
        Affine.Apply(values, width, low);
    }
}
