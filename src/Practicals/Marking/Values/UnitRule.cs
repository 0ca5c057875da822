namespace Calx.Practicals.Marking.Values;

/// <summary>Whether the unit behind a number is the one asked for.</summary>
internal static class UnitRule
{
    private static readonly Dictionary<string, string[]> Spellings = new(StringComparer.Ordinal)
    {
        ["g"] = ["g", "gram", "grams", "gramme", "grammes", "gm"],
        ["mol"] = ["mol", "mole", "moles", "mols"],
        ["%"] = ["%", "percent", "per cent"],
        ["1"] = [],
        ["°C"] = ["°C", "C", "degC", "°", "K"],
        ["cm³"] = ["cm³", "cm3", "cm^3", "ml", "mL"],
        ["dm³"] = ["dm³", "dm3", "dm^3", "l", "L"],
        ["K"] = ["K", "kelvin", "°C"],
        ["J"] = ["J", "joule", "joules"],
        ["kJ"] = ["kJ", "kilojoule", "kilojoules"],
        ["kJ/mol"] = ["kJ/mol", "kJ mol-1", "kJ mol^-1", "kJ mol⁻¹", "kJ per mole"],
        ["kJ/g"] = ["kJ/g", "kJ g-1", "kJ g^-1", "kJ g⁻¹"],
        ["A"] = ["A", "amp", "amps", "ampere", "amperes"],
        ["C"] = ["C", "coulomb", "coulombs", "As", "A s"],
        ["s"] = ["s", "sec", "seconds"],
        ["min"] = ["min", "minutes"],
    };

    /// <summary>Units a thousand times smaller or larger, which are right when the number is.</summary>
    private static readonly Dictionary<(string Asked, string Given), double> Factors = new()
    {
        [("g", "mg")] = 1e-3,
        [("g", "kg")] = 1e3,
        [("kJ", "J")] = 1e-3,
        [("J", "kJ")] = 1e3,
        [("kJ/mol", "J/mol")] = 1e-3,
        [("mol", "mmol")] = 1e-3,
        [("cm³", "dm³")] = 1e3,
        [("cm³", "dm3")] = 1e3,
        [("dm³", "cm³")] = 1e-3,
        [("dm³", "cm3")] = 1e-3,
    };

    /// <summary>By what a number is multiplied to be in the unit asked for: 1 unless it stands in a known multiple of it.</summary>
    public static double Factor(string asked, string given) => Factors.GetValueOrDefault((asked, given.Trim()), 1);

    /// <summary>Whether what stands behind the number is another unit than asked for. Capitals count only where one letter is the whole unit.</summary>
    public static bool IsWrong(string asked, string given)
    {
        string plain = given.Trim().TrimEnd('.');
        if (plain.Length == 0 || Factor(asked, plain) != 1)
        {
            return false;
        }

        string[] known = Spellings.GetValueOrDefault(asked) ?? [asked];
        return !known.Any(k => string.Equals(k, plain, k.Length > 1 ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal));
    }
}
