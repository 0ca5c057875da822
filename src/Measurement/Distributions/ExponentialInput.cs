namespace Calx.Measurement.Distributions;

/// <summary>An exponential distribution: a quantity that cannot be negative, of which only the best estimate is known
/// (JCGM 101:2008, 6.4.10).</summary>
public sealed class ExponentialInput : InputDistribution
{
    /// <summary>States the law.</summary>
    /// <param name="mean">Best estimate, above 0.</param>
    /// <exception cref="ArgumentException">The mean is not a finite number above 0.</exception>
    public ExponentialInput(double mean) => Mean = InputGuard.Positive(mean, "mean");

    /// <inheritdoc/>
    public override double Mean { get; }

    /// <summary>Equal to the mean.</summary>
    public override double StandardDeviation => Mean;

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return -Mean * Math.Log(stream.NextDouble());
    }
}
