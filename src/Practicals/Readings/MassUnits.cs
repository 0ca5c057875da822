using Calx.Measurement.Numbers;

namespace Calx.Practicals.Readings;

/// <summary>Exact conversion between units that are powers of ten apart (mg, g and kg; cm³ and dm³; mA and A): the decimal point is
/// moved, no digit changes.</summary>
internal static class MassUnits
{
    /// <summary>By how many places the point moves to the right from one unit to another: 0 for the same unit, -3 from
    /// mg to g, 3 from kg to g; null where one is not the other's kind.</summary>
    public static int? Shift(string from, string to)
    {
        if (from == to)
            return 0;
        return (Power(from), Power(to)) is ((string kind, int a), (string other, int b)) && kind == other ? a - b : null;
    }

    /// <summary>Moves the point; decimals move with it as far as there are any.</summary>
    public static WrittenNumber Move(WrittenNumber number, int places) => places switch
    {
        0 => number,
        // Built from its parts, because a product's scale is the sum of the scales: 0.02431 kg would become 24.31000 g.
        > 0 => new WrittenNumber(decimal.Round(number.Value * Ten(places), Math.Max(0, number.Decimals - places))),
        _ => new WrittenNumber(number.Value * new decimal(1, 0, 0, false, (byte)-places)),
    };

    /// <summary>What one step of the last digit is worth once the point has been moved.</summary>
    public static decimal LastDigit(int decimals, int places)
    {
        int left = decimals - places;
        return left >= 0 ? new decimal(1, 0, 0, false, (byte)left) : Ten(-left);
    }

    private static (string Kind, int Power)? Power(string unit) => unit switch
    {
        "mg" => ("g", -3),
        "g" => ("g", 0),
        "kg" => ("g", 3),
        "cm3" => ("cm3", 0),
        "dm3" => ("cm3", 3),
        "mA" => ("A", -3),
        "A" => ("A", 0),
        _ => null,
    };

    private static decimal Ten(int power)
    {
        decimal ten = 1;
        for (int i = 0; i < power; i++)
            ten *= 10;
        return ten;
    }
}
