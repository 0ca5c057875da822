namespace Calx.Measurement.Weighing;

/// <summary>
/// The step d between two values that a balance can show: 1, 2 or 5 times a power of ten (the form that OIML R 76-1:2006 asks of scale intervals).
/// Held as a decimal, so that whether a reading lies on a step is decided exactly.
/// </summary>
public sealed class ScaleInterval
{
    /// <summary>The finest step held, in grams: a tenth of what a microbalance shows.</summary>
    public const double Finest = 1e-8;

    /// <summary>The coarsest step held, in grams: a weighbridge's.</summary>
    public const double Coarsest = 1e5;

    private static readonly decimal[] Digits = [1m, 2m, 5m];

    /// <summary>A step given in grams.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No balance has it: see <see cref="IsOne"/>.</exception>
    public ScaleInterval(double grams)
    {
        Exact = Find(grams) ?? throw new ArgumentOutOfRangeException(
            nameof(grams), grams, "A scale interval is 1, 2 or 5 times a power of ten.");
        Grams = grams;
    }

    /// <summary>The step in grams.</summary>
    public double Grams { get; }

    /// <summary>The step in grams, exactly; its scale is the number of decimals shown.</summary>
    public decimal Exact { get; }

    /// <summary>How many decimals the display has: 2 for 0.01 g and for 0.05 g, 0 for 1 g and above.</summary>
    public int Decimals => Exact.Scale;

    /// <summary>Whether a number from a person can be a balance's step; ask before constructing.</summary>
    public static bool IsOne(double grams) => Find(grams) is not null;

    private static decimal? Find(double grams)
    {
        if (!(grams >= Finest * 0.999) || grams > Coarsest * 1.001)
        {
            return null;
        }

        int exponent = (int)Math.Floor(Math.Log10(grams * 1.000001));
        decimal power = exponent < 0 ? new decimal(1, 0, 0, false, (byte)-exponent) : (decimal)Math.Pow(10, exponent);
        foreach (decimal digit in Digits)
        {
            // A double read from '0.05' is the nearest to it, so anything further off was meant otherwise.
            if (Math.Abs((double)(digit * power) - grams) <= 1e-12 * grams)
            {
                return digit * power;
            }
        }

        return null;
    }
}
