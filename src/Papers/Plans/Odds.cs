using System.Globalization;

namespace Calx.Papers.Plans;

/// <summary>Probabilities as a table shows them: how many times in 100.</summary>
internal static class Odds
{
    /// <summary>The number alone; never 0 or 100 for what may still happen or fail.</summary>
    public static string InHundred(double probability) => Math.Round(100 * probability) switch
    {
        < 1 => "< 1",
        > 99 => "> 99",
        double times => string.Create(CultureInfo.InvariantCulture, $"{times:F0}"),
    };

    /// <summary>With its words.</summary>
    public static string Times(double probability) => Math.Round(100 * probability) switch
    {
        < 1 => "less than once in 100 times",
        > 99 => "more than 99 times in 100",
        1 => "once in 100 times",
        double times => string.Create(CultureInfo.InvariantCulture, $"{times:F0} times in 100"),
    };
}
