using System.Runtime.CompilerServices;

namespace Calx.Measurement.Distributions;

/// <summary>Guards of the functions in this folder.</summary>
internal static class Probability
{
    /// <summary>A probability of which a quantile is asked: above 0 and below 1.</summary>
    public static void Inside(double p, [CallerArgumentExpression(nameof(p))] string name = "")
    {
        if (!(p > 0 && p < 1))
        {
            throw new ArgumentOutOfRangeException(name, p, "A probability between 0 and 1, both excluded, is needed.");
        }
    }

    /// <summary>A parameter that must be a finite number above 0.</summary>
    public static void Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && double.IsFinite(value)))
        {
            throw new ArgumentOutOfRangeException(name, value, "A finite number above 0 is needed.");
        }
    }

    /// <summary>Degrees of freedom: above 0, +∞ allowed.</summary>
    public static void Degrees(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0))
        {
            throw new ArgumentOutOfRangeException(name, value, "Degrees of freedom above 0 are needed.");
        }
    }

    /// <summary>Any number but NaN.</summary>
    public static void Number(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (double.IsNaN(value))
        {
            throw new ArgumentOutOfRangeException(name, value, "A number is needed.");
        }
    }
}
