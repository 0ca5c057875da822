using System.Globalization;

namespace Calx.App.Pages.Students;

/// <summary>How many decimals, in words: 'two decimals'.</summary>
public static class DecimalWords
{
    private static readonly string[] Numbers = ["no", "one", "two", "three", "four", "five"];

    /// <summary>The words.</summary>
    public static string Of(int decimals)
    {
        string number = decimals < Numbers.Length ? Numbers[decimals] : decimals.ToString(CultureInfo.InvariantCulture);
        return decimals == 1 ? $"{number} decimal" : $"{number} decimals";
    }
}
