namespace Calx.Measurement.Distributions;

/// <summary>A triangular distribution: two limits and the most likely value (JCGM 101:2008, 6.4.5, there symmetric).
/// </summary>
public sealed class TriangularInput : InputDistribution
{
    private readonly double low;
    private readonly double mode;
    private readonly double high;

    /// <summary>States the law.</summary>
    /// <param name="low">Lower limit.</param>
    /// <param name="mode">Most likely value, from the lower to the upper limit.</param>
    /// <param name="high">Upper limit, above the lower.</param>
    /// <exception cref="ArgumentException">A parameter is not finite, or they are not in order.</exception>
    public TriangularInput(double low, double mode, double high)
    {
        InputGuard.Rising(low, high);
        if (!(low <= mode && mode <= high))
        {
            throw InputGuard.Fault(
                $"The most likely value must lie between the limits {InputGuard.Shown(low)} and "
                + $"{InputGuard.Shown(high)}; it is {InputGuard.Shown(mode)}.");
        }

        (this.low, this.mode, this.high) = (low, mode, high);
    }

    /// <inheritdoc/>
    public override double Mean => low + (((mode - low) + (high - low)) / 3);

    /// <inheritdoc/>
    public override double StandardDeviation
    {
        get
        {
            double left = mode - low;
            double right = high - mode;
            return Math.Sqrt(((left * left) + (left * right) + (right * right)) / 18);
        }
    }

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        double p = stream.NextDouble();
        double width = high - low;
        return p * width < mode - low
            ? low + Math.Sqrt(p * width * (mode - low))
            : high - Math.Sqrt((1 - p) * width * (high - mode));
    }
}
