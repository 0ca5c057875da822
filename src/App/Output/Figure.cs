using System.Globalization;

namespace Calx.App.Output;

/// <summary>Numbers as a person reads them.</summary>
internal static class Figure
{
    /// <summary>
    /// Value and standard uncertainty in the same decimals, the uncertainty to two significant digits, as JCGM 100
    /// 7.2.6 advises: <c>40.304 ± 0.002</c>.
    /// </summary>
    public static string WithUncertainty(double value, double standardUncertainty)
    {
        if (standardUncertainty <= 0)
        {
            return Significant(value, 12);
        }

        if (standardUncertainty < 1e-9 || Math.Abs(value) >= 1e12)
        {
            return $"{Significant(value, 12)} ± {Significant(standardUncertainty, 2)}";
        }

        int decimals = DecimalsFor(standardUncertainty);
        return $"{Fixed(value, decimals)} ± {Fixed(standardUncertainty, decimals)}";
    }

    /// <summary>The value in the decimals that its uncertainty deserves.</summary>
    public static string Rounded(double value, double standardUncertainty) =>
        standardUncertainty >= 1e-9 && Math.Abs(value) < 1e12
            ? Fixed(value, DecimalsFor(standardUncertainty))
            : Significant(value, 12);

    /// <summary>A number to a given number of significant digits.</summary>
    public static string Significant(double value, int digits) =>
        value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>A number with a given number of decimals; what rounds to nothing has no sign.</summary>
    public static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text[0] == '-' && !text.AsSpan().ContainsAnyInRange('1', '9') ? text[1..] : text;
    }

    /// <summary>Decimals that show two significant digits of an uncertainty; 0 to 15.</summary>
    public static int DecimalsFor(double standardUncertainty)
    {
        int firstDigit = (int)Math.Floor(Math.Log10(standardUncertainty));
        // 0.0996 rounds to 0.10, whose first digit stands one place to the left.
        int decimals = Math.Clamp(1 - firstDigit, 0, 15);
        double rounded = Math.Round(standardUncertainty, decimals);
        return rounded >= Math.Pow(10, firstDigit + 1) ? Math.Max(0, decimals - 1) : decimals;
    }
}
