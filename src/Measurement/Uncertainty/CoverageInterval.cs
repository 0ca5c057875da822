namespace Calx.Measurement.Uncertainty;

/// <summary>An interval that holds the value of a quantity with a stated probability (JCGM 101:2008, 3.12).</summary>
/// <param name="Low">Lower end, in the unit of the quantity.</param>
/// <param name="High">Upper end, in the unit of the quantity.</param>
/// <param name="Coverage">The probability, between 0 and 1, for instance 0.95.</param>
public readonly record struct CoverageInterval(double Low, double High, double Coverage)
{
    /// <summary>High end less low end.</summary>
    public double Width => High - Low;

    /// <summary>Whether a value lies in the interval, ends included.</summary>
    public bool Contains(double value) => value >= Low && value <= High;
}
