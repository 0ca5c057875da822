using System.Globalization;

namespace Calx.Practicals.Watching;

/// <summary>Words of questions about readings.</summary>
internal static class QueryWords
{
    /// <summary>'two decimals'.</summary>
    public static string Decimals(int number) => number switch
    {
        0 => "no decimals",
        1 => "one decimal",
        2 => "two decimals",
        3 => "three decimals",
        4 => "four decimals",
        _ => string.Create(CultureInfo.InvariantCulture, $"{number} decimals"),
    };
}
