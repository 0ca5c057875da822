namespace Calx.Measurement.Distributions;

/// <summary>A beta distribution stretched over two limits: a fraction such as a purity or a completeness.</summary>
public sealed class BetaInput : InputDistribution
{
    private readonly double alpha;
    private readonly double beta;
    private readonly double low;
    private readonly double width;

    /// <summary>States the law.</summary>
    /// <param name="alpha">First shape, above 0; a larger one draws towards the upper limit.</param>
    /// <param name="beta">Second shape, above 0.</param>
    /// <param name="low">Lower limit.</param>
    /// <param name="high">Upper limit, above the lower.</param>
    /// <exception cref="ArgumentException">A parameter is out of range.</exception>
    public BetaInput(double alpha, double beta, double low = 0, double high = 1)
    {
        this.alpha = InputGuard.Positive(alpha, "first shape");
        this.beta = InputGuard.Positive(beta, "second shape");
        InputGuard.Rising(low, high);
        this.low = low;
        width = high - low;
    }

    /// <inheritdoc/>
    public override double Mean => low + (width * (alpha / (alpha + beta)));

    /// <inheritdoc/>
    public override double StandardDeviation
    {
        get
        {
            double sum = alpha + beta;
            return width * Math.Sqrt(alpha / sum * (beta / sum) / (sum + 1));
        }
    }

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        // X/(X + Y) for gamma variables; in logarithms, because both may vanish when the shapes are small.
        double first = GammaDraw.NextLog(stream, alpha);
        double second = GammaDraw.NextLog(stream, beta);
        return low + (width / (1 + Math.Exp(second - first)));
    }
}
