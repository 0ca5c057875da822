using System.Globalization;

namespace Calx.Measurement.Numbers;

/// <summary>How a computed number is shown to a person: with the decimals that its uncertainty allows.</summary>
public static class Figures
{
    /// <summary>Most decimals shown; beyond it a number is written with a power of ten.</summary>
    public const int MostDecimals = 9;

    /// <summary>
    /// Decimals that a value deserves: its standard uncertainty is shown to two significant figures where these would
    /// be 10 to 29, else to one (JCGM 100:2008, 7.2.6 asks for at most two; one for 3 to 9 is the school's habit).
    /// </summary>
    /// <param name="standardUncertainty">In the unit of the value; at least 0. Zero, an exact value, gives 0.</param>
    /// <returns>0 to <see cref="MostDecimals"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="standardUncertainty"/> is negative or not finite.</exception>
    public static int DecimalsFor(double standardUncertainty)
    {
        if (!(standardUncertainty >= 0) || double.IsInfinity(standardUncertainty))
        {
            throw new ArgumentOutOfRangeException(
                nameof(standardUncertainty), standardUncertainty, "A standard uncertainty is a finite number, at least 0.");
        }

        if (standardUncertainty == 0)
        {
            return 0;
        }

        double magnitude = Math.Floor(Math.Log10(standardUncertainty));
        double leading = standardUncertainty / Math.Pow(10, magnitude);
        int decimals = (int)-magnitude + (leading < 2.95 ? 1 : 0);
        return Math.Clamp(decimals, 0, MostDecimals);
    }

    /// <summary>The value rounded to <paramref name="decimals"/>, trailing zeros kept, with a true minus sign.</summary>
    /// <param name="value">A finite number.</param>
    /// <param name="decimals">0 to <see cref="MostDecimals"/>.</param>
    public static string Text(double value, int decimals)
    {
        string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        bool isZero = !text.AsSpan().ContainsAnyInRange('1', '9');
        return text[0] != '-' ? text : isZero ? text[1..] : "\u2212" + text[1..];
    }

    /// <summary>A value with its standard uncertainty, both to the same decimals: <c>1.02 ± 0.11</c>.</summary>
    public static string WithUncertainty(double value, double standardUncertainty)
    {
        int decimals = DecimalsFor(standardUncertainty);
        return $"{Text(value, decimals)} ± {Text(standardUncertainty, decimals)}";
    }
}
