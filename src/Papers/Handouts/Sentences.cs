using System.Globalization;

namespace Calx.Papers.Handouts;

/// <summary>Small matters of wording that papers share.</summary>
internal static class Sentences
{
    /// <summary>A heading of a quantity: its name and unit as quantity / unit (ISO 80000-1); the name alone where it has none.</summary>
    public static string Heading(string label, string unit) => unit == "1" ? label : $"{label}\u00a0/\u00a0{unit}";

    /// <summary>A mass to weigh out, in g, with a trailing zero where the balance shows it.</summary>
    public static string Mass(double grams, int decimals) => grams.ToString($"F{Math.Clamp(decimals, 0, 6)}", CultureInfo.InvariantCulture) + "\u00a0g";

    /// <summary>Things in a row, the last two joined by 'and'.</summary>
    public static string And(IReadOnlyList<string> things) => things.Count switch
    {
        0 => string.Empty,
        1 => things[0],
        _ => $"{string.Join(", ", things.Take(things.Count - 1))} and {things[^1]}",
    };
}
