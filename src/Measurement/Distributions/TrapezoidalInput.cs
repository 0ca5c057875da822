namespace Calx.Measurement.Distributions;

/// <summary>
/// A trapezoidal distribution: the density rises from a to b, is level to c and falls to d. The sum of two rectangular
/// effects has this law (JCGM 101:2008, 6.4.4, there symmetric).
/// </summary>
public sealed class TrapezoidalInput : InputDistribution
{
    private readonly double a;
    private readonly double b;
    private readonly double c;
    private readonly double d;

    /// <summary>States the law.</summary>
    /// <param name="a">Where the density begins to rise.</param>
    /// <param name="b">Where it becomes level, a or more.</param>
    /// <param name="c">Where it begins to fall, b or more.</param>
    /// <param name="d">Where it ends, c or more and above a.</param>
    /// <exception cref="ArgumentException">A parameter is not finite, or they are not in order.</exception>
    public TrapezoidalInput(double a, double b, double c, double d)
    {
        InputGuard.Rising(a, d);
        if (!(a <= b && b <= c && c <= d))
        {
            throw InputGuard.Fault(
                "The four corners of a trapezoidal distribution must be in rising order; they are "
                + $"{InputGuard.Shown(a)}, {InputGuard.Shown(b)}, {InputGuard.Shown(c)} and {InputGuard.Shown(d)}.");
        }

        (this.a, this.b, this.c, this.d) = (a, b, c, d);
    }

    /// <inheritdoc/>
    public override double Mean => a + Moments().Mean;

    /// <inheritdoc/>
    public override double StandardDeviation => Math.Sqrt(Moments().Variance);

    /// <inheritdoc/>
    public override double Draw(RandomStream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        return At(stream.NextDouble());
    }

    // The area of each piece is in proportion to half its width on the slopes and its width on the level part.
    private double At(double p)
    {
        double twiceArea = d - a + (c - b);
        double area = p * twiceArea;
        if (area < b - a)
        {
            return a + Math.Sqrt(area * (b - a));
        }

        double above = (1 - p) * twiceArea;
        return above < d - c ? d - Math.Sqrt(above * (d - c)) : b + ((area - (b - a)) / 2);
    }

    // A mixture of the two slopes and the level part, measured from a so that large offsets do not cancel.
    private (double Mean, double Variance) Moments()
    {
        double twiceArea = d - a + (c - b);
        (double Share, double Mean, double Variance)[] parts =
        [
            ((b - a) / twiceArea, (b - a) * 2 / 3, (b - a) * (b - a) / 18),
            (2 * (c - b) / twiceArea, (b - a) + ((c - b) / 2), (c - b) * (c - b) / 12),
            ((d - c) / twiceArea, (c - a) + ((d - c) / 3), (d - c) * (d - c) / 18),
        ];
        double mean = parts.Sum(part => part.Share * part.Mean);
        double variance = parts.Sum(part => part.Share * (part.Variance + ((part.Mean - mean) * (part.Mean - mean))));
        return (mean, variance);
    }
}
