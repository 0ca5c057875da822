namespace Calx.Measurement.Distributions;

/// <summary>A gamma distribution: what is known of a mean count after q counts has shape q + 1 and scale 1 (JCGM
/// 101:2008, 6.4.11).</summary>
public sealed class GammaInput : InputDistribution
{
    private readonly double shape;
    private readonly double scale;

    /// <summary>States the law.</summary>
    /// <param name="shape">Shape, above 0.</param>
    /// <param name="scale">Scale, above 0, in the unit of the quantity.</param>
    /// <exception cref="ArgumentException">A parameter is not a finite number above 0.</exception>
    public GammaInput(double shape, double scale)
    {
        this.shape = InputGuard.Positive(shape, "shape");
        this.scale = InputGuard.Positive(scale, "scale");
    }

    /// <inheritdoc/>
    public override double Mean => shape * scale;

    /// <inheritdoc/>
    public override double StandardDeviation => Math.Sqrt(shape) * scale;

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return scale * GammaDraw.Next(stream, shape);
    }
}
