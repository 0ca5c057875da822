using Calx.Measurement.Weighing;

namespace Calx.Practicals.Definition;

/// <summary>How far what an instrument other than a balance shows may lie from the truth; all in the unit of its reading.</summary>
public sealed class InstrumentErrors(double resolution, double spread, double tolerance, double scaleTolerance, Provenance provenance)
{
    /// <summary>The smallest step that is written down: 1, 2 or 5 times a power of ten.</summary>
    public ScaleInterval Step { get; } = new(resolution);

    /// <summary>Standard deviation of repeated readings of the same thing, before rounding.</summary>
    public double Spread { get; } = spread;

    /// <summary>Half width within which the whole scale may be shifted: the same for all readings that a group takes with the
    /// instrument, so that it cancels in a difference.</summary>
    public double Tolerance { get; } = tolerance;

    /// <summary>Half width of the share by which the scale may be too wide or too narrow: 0.02 for 2 in 100. It does not cancel.</summary>
    public double ScaleTolerance { get; } = scaleTolerance;

    /// <summary>Where the numbers come from.</summary>
    public Provenance Provenance { get; } = provenance;

    /// <summary>Variance of one reading by itself: rounding is rectangular over one step (JCGM 100:2008, F.2.2.1), and the spread
    /// comes before it.</summary>
    /// <param name="resolution">The step of the last digit as it was written down.</param>
    public double ReadingVariance(double resolution) => (Spread * Spread) + (resolution * resolution / 12);

    /// <summary>Standard uncertainty that all readings share, of a reading of this size: both half widths are rectangular
    /// (JCGM 100:2008, 4.3.7).</summary>
    public double SharedStandardUncertainty(double shown) =>
        Math.Sqrt(((Tolerance * Tolerance) + (ScaleTolerance * ScaleTolerance * shown * shown)) / 3);
}
