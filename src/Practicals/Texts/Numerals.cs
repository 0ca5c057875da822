using System.Globalization;

namespace Calx.Practicals.Texts;

/// <summary>Numbers as they stand in a text, the same on every machine.</summary>
internal static class Numerals
{
    /// <summary>A whole number.</summary>
    public static string InFigures(this int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A number in a format such as <c>F1</c> or <c>0.##</c>; without one in as many figures as it has.</summary>
    public static string InFigures(this double number, string? format = null) => number.ToString(format, CultureInfo.InvariantCulture);

    /// <inheritdoc cref="InFigures(double, string?)"/>
    public static string InFigures(this decimal number, string? format = null) => number.ToString(format, CultureInfo.InvariantCulture);
}
