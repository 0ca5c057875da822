namespace Calx.Measurement.Distributions;

/// <summary>A rectangular distribution with inexact limits: each limit is known to ±d, the middle exactly (JCGM
/// 101:2008, 6.4.3).</summary>
public sealed class CurvilinearTrapezoidInput : InputDistribution
{
    private readonly double middle;
    private readonly double halfWidth;
    private readonly double doubt;

    /// <summary>States the law.</summary>
    /// <param name="low">Lower limit.</param>
    /// <param name="high">Upper limit, above the lower.</param>
    /// <param name="d">How far either limit may be off, above 0 and below half the distance of the limits.</param>
    /// <exception cref="ArgumentException">A parameter is not finite or out of range.</exception>
    public CurvilinearTrapezoidInput(double low, double high, double d)
    {
        InputGuard.Rising(low, high);
        halfWidth = (high - low) / 2;
        middle = low + halfWidth;
        doubt = d > 0 && d < halfWidth
            ? d
            : throw InputGuard.Fault(
                "How far a limit may be off must be above 0 and below half the distance of the limits, "
                + $"{InputGuard.Shown(halfWidth)}; it is {InputGuard.Shown(d)}.");
    }

    /// <inheritdoc/>
    public override double Mean => middle;

    /// <summary>√((b − a)²/12 + d²/9).</summary>
    public override double StandardDeviation => Math.Sqrt((halfWidth * halfWidth / 3) + (doubt * doubt / 9));

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        double half = halfWidth + (doubt * ((2 * stream.NextDouble()) - 1));
        return middle + (half * ((2 * stream.NextDouble()) - 1));
    }
}
