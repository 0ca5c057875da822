using Calx.Measurement.Numbers;

namespace Calx.Practicals.Readings;

/// <summary>Conversion of a number as written into the unit of the practical's reading: minutes of a clock into seconds, millilitres
/// into cubic centimetres. Powers of ten move the point (<see cref="MassUnits"/>); times are multiplied.</summary>
internal static class ReadingUnits
{
    /// <summary>Kelvin at the zero of the Celsius scale, exactly.</summary>
    private const decimal Zero = 273.15m;

    /// <summary>More decimals than this a time in minutes does not get from seconds.</summary>
    private const int TimeDecimals = 2;

    /// <summary>Whether numbers of one unit can be given in the other.</summary>
    public static bool Fits(string from, string to) =>
        Meant(from, to) == to || MassUnits.Shift(from, to) is not null || (Seconds(from) > 0 && Seconds(to) > 0) || (IsTemperature(from) && IsTemperature(to));

    /// <summary>The number in the other unit, and what one step of its last digit is worth; null where one is not the other's kind.</summary>
    public static (WrittenNumber Value, decimal LastDigit)? Converted(WrittenNumber written, string from, string to)
    {
        decimal step = new(1, 0, 0, false, (byte)written.Decimals);
        if (MassUnits.Shift(Meant(from, to), to) is int shift)
        {
            return (MassUnits.Move(written, shift), MassUnits.LastDigit(written.Decimals, shift));
        }

        if (Seconds(from) is > 0 and decimal seconds && Seconds(to) is > 0 and decimal unit)
        {
            decimal factor = seconds / unit;
            return factor >= 1
                ? (new WrittenNumber(Plain(written.Value * factor, 0)), step * factor)
                : (new WrittenNumber(decimal.Round(written.Value / (unit / seconds), written.Decimals + TimeDecimals)), step / (unit / seconds));
        }

        // Two decimals of kelvin stay two: 293.15 K is 20.00 °C, 293 K is 20 °C.
        return IsTemperature(from) && IsTemperature(to)
            ? (new WrittenNumber(decimal.Round(written.Value + (from == "K" ? -Zero : Zero), written.Decimals)), step)
            : null;
    }

    /// <summary>A bare C over temperatures means degrees, not coulombs.</summary>
    private static string Meant(string from, string to) => from == "C" && to == "°C" ? to : from;

    private static decimal Seconds(string unit) => unit switch { "s" => 1, "min" => 60, "h" => 3600, _ => 0 };

    private static bool IsTemperature(string unit) => unit is "°C" or "K";

    /// <summary>Without the zeros that a factor of sixty leaves behind the point, but at least so many decimals.</summary>
    private static decimal Plain(decimal value, int decimals)
    {
        decimal plain = decimal.Round(value, decimals);
        while (plain != value && decimals < 6)
        {
            plain = decimal.Round(value, ++decimals);
        }

        return plain;
    }
}
