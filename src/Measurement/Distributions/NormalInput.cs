namespace Calx.Measurement.Distributions;

/// <summary>A normal distribution: the best estimate and its standard uncertainty, nothing more known (JCGM 101:2008,
/// 6.4.7).</summary>
public sealed class NormalInput : InputDistribution
{
    /// <summary>States the law.</summary>
    /// <param name="mean">Best estimate.</param>
    /// <param name="standardDeviation">Standard uncertainty, 0 or more.</param>
    /// <exception cref="ArgumentException">A parameter is not finite, or the standard deviation is negative.</exception>
    public NormalInput(double mean, double standardDeviation)
    {
        Mean = InputGuard.Finite(mean, "mean");
        StandardDeviation = InputGuard.NotNegative(standardDeviation, "standard deviation");
    }

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <inheritdoc/>
    public override double StandardDeviation { get; }

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return Mean + (StandardDeviation * stream.NextNormal());
    }

    /// <inheritdoc/>
    public override void Fill(RandomStream stream, Span<double> values)
    {
        ArgumentNullException.ThrowIfNull(stream);
        stream.FillNormal(values);
        Affine.Apply(values, StandardDeviation, Mean);
    }
}
