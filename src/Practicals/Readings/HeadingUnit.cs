using System.Collections.Frozen;

namespace Calx.Practicals.Readings;

/// <summary>Parts a heading into what is meant and its unit: <c>Mass after heating / g</c>, <c>(g)</c>, <c>in g</c>.</summary>
internal static class HeadingUnit
{
    private static readonly FrozenDictionary<string, string> Units = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["g"] = "g", ["G"] = "g", ["gram"] = "g", ["grams"] = "g", ["gramme"] = "g", ["grammes"] = "g",
        ["gm"] = "g", ["gms"] = "g", ["Gram"] = "g", ["Grams"] = "g", ["gr"] = "g",
        // 'Mg' is magnesium, so milligrams are read in small letters only.
        ["mg"] = "mg", ["milligram"] = "mg", ["milligrams"] = "mg",
        ["kg"] = "kg", ["Kg"] = "kg", ["KG"] = "kg", ["kilogram"] = "kg", ["kilograms"] = "kg",
        ["s"] = "s", ["sec"] = "s", ["secs"] = "s", ["second"] = "s", ["seconds"] = "s", ["min"] = "min", ["mins"] = "min", ["minute"] = "min",
        ["minutes"] = "min", ["h"] = "h", ["hr"] = "h", ["hours"] = "h",
        ["°C"] = "°C", ["ºC"] = "°C", ["degC"] = "°C", ["deg C"] = "°C", ["°c"] = "°C", ["degrees C"] = "°C", ["K"] = "K",
        ["A"] = "A", ["amp"] = "A", ["amps"] = "A", ["ampere"] = "A", ["amperes"] = "A", ["mA"] = "mA", ["milliamps"] = "mA", ["V"] = "V", ["C"] = "C", ["J"] = "J",
        ["cm3"] = "cm3", ["cm³"] = "cm3", ["cm^3"] = "cm3", ["ml"] = "cm3", ["mL"] = "cm3", ["dm3"] = "dm3",
        ["dm³"] = "dm3", ["l"] = "dm3", ["L"] = "dm3", ["mol"] = "mol", ["moles"] = "mol", ["%"] = "%", ["kJ"] = "kJ",
        ["kJ/mol"] = "kJ/mol", ["kJ/g"] = "kJ/g", ["g/mol"] = "g/mol", ["mg/C"] = "mg/C",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The unit that a text names, in its usual form, or null where it names none.</summary>
    public static string? Named(ReadOnlySpan<char> text) =>
        Units.GetAlternateLookup<ReadOnlySpan<char>>().TryGetValue(text.Trim().TrimEnd('.'), out string? unit) ? unit : null;

    /// <summary>The unit in its usual form, or as it is where it is not a known one.</summary>
    public static string Usual(string unit) => Named(unit) ?? unit;

    /// <summary>Takes unit and uncertainty off a heading.</summary>
    /// <returns>The rest, and the unit or null.</returns>
    public static (string Text, string? Unit) Split(string heading)
    {
        string rest = WithoutUncertainty(heading.Trim());
        return AfterSign(rest, '/') ?? InBrackets(rest, '(', ')') ?? InBrackets(rest, '[', ']')
            ?? AfterWord(rest) ?? (rest, null);
    }

    private static string WithoutUncertainty(string text)
    {
        int at = text.IndexOf('±', StringComparison.Ordinal);
        if (at < 0)
            at = text.IndexOf("+/-", StringComparison.Ordinal);
        return at <= 0 ? text : text[..at].TrimEnd(' ', '(', '[', ',', '\u00a0');
    }

    private static (string, string?)? AfterSign(string text, char sign)
    {
        // From the left, for units that have the sign in themselves: 'enthalpy / kJ/mol'.
        for (int at = text.IndexOf(sign); at >= 0; at = text.IndexOf(sign, at + 1))
        {
            if (at > 0 && Named(text.AsSpan(at + 1)) is string unit)
                return (text[..at].TrimEnd(), unit);
        }

        return null;
    }

    private static (string, string?)? InBrackets(string text, char open, char close)
    {
        int start = text.LastIndexOf(open);
        int end = start < 0 ? -1 : text.IndexOf(close, start);
        if (end < 0 || Named(text.AsSpan(start + 1, end - start - 1)) is not string unit)
            return null;
        return ((text[..start] + " " + text[(end + 1)..]).Trim(), unit);
    }

    private static (string, string?)? AfterWord(string text)
    {
        int at = text.AsSpan().LastIndexOfAny(" ,\u00a0\t");
        if (at <= 0 || Named(text.AsSpan(at + 1)) is not ("g" or "kg" or "mg" or "min" or "°C") || text.EndsWith(" mg", StringComparison.Ordinal)
            && !text.EndsWith(" in mg", StringComparison.Ordinal))
        {
            return null;
        }
        string rest = text[..at].TrimEnd(' ', ',', '\u00a0');
        if (rest.EndsWith(" in", StringComparison.OrdinalIgnoreCase))
            rest = rest[..^3].TrimEnd();
        return (rest, Named(text.AsSpan(at + 1)));
    }
}
