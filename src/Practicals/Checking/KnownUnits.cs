using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.Practicals.Checking;

/// <summary>Units that a school writes: those of the International System with their usual prefixes, those that are used beside them (BIPM, SI Brochure,
/// 9th edition, tables 2, 4, 7 and 8), and shares.</summary>
internal static class KnownUnits
{
    private static readonly string[] Symbols =
    [
        "1", "%", "‰", "ppm",
        "kg", "g", "mg", "µg", "t", "mol", "mmol", "kmol",
        "m", "dm", "cm", "mm", "µm", "nm", "km", "l", "L", "dl", "cl", "ml", "mL", "µl", "µL",
        "s", "ms", "min", "h", "d", "Hz", "K", "°C", "°",
        "A", "mA", "µA", "C", "mC", "kC", "V", "mV", "Ω", "kΩ", "S", "mS", "µS", "F",
        "J", "kJ", "MJ", "mJ", "W", "kW", "mW", "N", "mN", "Pa", "kPa", "hPa", "bar", "mbar", "atm", "u", "Da",
    ];

    /// <summary>The part of a unit that is none, or null where all of it is known.</summary>
    public static string? Unknown(string unit) => unit
        .Split([' ', '/', '·', '*', '(', ')', '\u00A0', '\u202F'], StringSplitOptions.RemoveEmptyEntries)
        .FirstOrDefault(part => !IsKnown(part));

    /// <summary>The unit that was probably meant, or null.</summary>
    public static string? Meant(string part) => Slips.Nearest(part, Symbols.Where(s => s.Length > 1));

    private static bool IsKnown(string part) =>
        double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _)
        || Symbols.Contains(part) || Symbols.Contains(part.TrimEnd(Powers).TrimEnd('^'));

    /// <summary>What stands behind a symbol as its power: cm³, s⁻¹, mol-1, dm^3.</summary>
    private static readonly char[] Powers = [.. "⁰¹²³⁴⁵⁶⁷⁸⁹⁻0123456789-−"];
}
