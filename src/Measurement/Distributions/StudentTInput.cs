namespace Calx.Measurement.Distributions;

/// <summary>A scaled and shifted t distribution: a mean of n readings with s/√n and n − 1 degrees of freedom (JCGM
/// 101:2008, 6.4.9).</summary>
public sealed class StudentTInput : InputDistribution
{
    /// <summary>States the law.</summary>
    /// <param name="mean">The centre: the mean of the readings.</param>
    /// <param name="scale">s/√n, above 0.</param>
    /// <param name="degreesOfFreedom">1 or more; +∞ for a normal distribution.</param>
    /// <exception cref="ArgumentException">A parameter is out of range.</exception>
    public StudentTInput(double mean, double scale, double degreesOfFreedom)
    {
        Mean = InputGuard.Finite(mean, "mean");
        StandardUncertainty = InputGuard.Positive(scale, "scale");
        DegreesOfFreedom = degreesOfFreedom >= 1
            ? degreesOfFreedom
            : throw InputGuard.Fault(
                $"The degrees of freedom must be 1 or more; they are {InputGuard.Shown(degreesOfFreedom)}.");
    }

    /// <summary>The centre, which is the expectation where the degrees of freedom are above 1.</summary>
    public override double Mean { get; }

    /// <summary>The scale s/√n (JCGM 100:2008, 4.2.3).</summary>
    public override double StandardUncertainty { get; }

    /// <inheritdoc/>
    public override double DegreesOfFreedom { get; }

    /// <summary>The scale times √(ν/(ν − 2)); +∞ where ν is 2 or less.</summary>
    public override double StandardDeviation => DegreesOfFreedom <= 2
        ? double.PositiveInfinity
        : StandardUncertainty / Math.Sqrt(1 - (2 / DegreesOfFreedom));

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        double z = stream.NextNormal();
        double share = double.IsInfinity(DegreesOfFreedom)
            ? 1
            : GammaDraw.Next(stream, DegreesOfFreedom / 2) / (DegreesOfFreedom / 2);
        return Mean + (StandardUncertainty * z / Math.Sqrt(share));
    }
}
