using System.Globalization;

namespace Calx.Practicals.Readings;

/// <summary>How many decimals a balance shows, as a sentence has it: 'two decimals'.</summary>
public static class DecimalsInWords
{
    private static readonly string[] Numbers = ["no", "one", "two", "three", "four", "five"];

    /// <summary>The words.</summary>
    /// <param name="decimals">From 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public static string Of(int decimals)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        string number = decimals < Numbers.Length ? Numbers[decimals] : decimals.ToString(CultureInfo.InvariantCulture);
        return decimals == 1 ? $"{number} decimal" : $"{number} decimals";
    }
}
