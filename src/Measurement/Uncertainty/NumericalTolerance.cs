using System.Globalization;

namespace Calx.Measurement.Uncertainty;

/// <summary>The numerical tolerance of an uncertainty (JCGM 101:2008, 7.9.2): half a unit in its last meaningful digit.
/// </summary>
public static class NumericalTolerance
{
    /// <summary>The most digits of a standard uncertainty that are ever meaningful.</summary>
    public const int MostDigits = 4;

    /// <summary>δ = ½ · 10^l, where u is written as c · 10^l with a whole c of the given number of digits; 0 where u is 0.
    /// </summary>
    /// <param name="standardUncertainty">u, finite and 0 or more.</param>
    /// <param name="significantDigits">How many digits of u are meaningful, 1 to 4.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Of(double standardUncertainty, int significantDigits)
    {
        CheckDigits(significantDigits);
        if (!(standardUncertainty >= 0 && double.IsFinite(standardUncertainty)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(standardUncertainty), standardUncertainty, "A finite number of 0 or more is needed.");
        }

        if (standardUncertainty == 0)
        {
            return 0;
        }

        // Written out, because rounding may carry: 0.0998 with two digits is 10 · 10^−2.
        string written = standardUncertainty.ToString($"E{significantDigits - 1}", CultureInfo.InvariantCulture);
        int exponent = int.Parse(written.AsSpan(written.IndexOf('E') + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return 0.5 * Math.Pow(10, exponent - significantDigits + 1);
    }

    internal static void CheckDigits(int significantDigits)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(significantDigits);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(significantDigits, MostDigits);
    }
}
