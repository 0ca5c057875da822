using System.Globalization;

namespace Calx.Practicals.Clock;

/// <summary>Probabilities as a teacher says them.</summary>
public static class Odds
{
    private static readonly (int Some, int Of, string Words)[] Fractions =
    [
        (1, 10, "one in ten"), (1, 5, "one in five"), (1, 4, "one in four"), (1, 3, "one in three"), (2, 5, "two in five"),
        (1, 2, "every second"), (3, 5, "three in five"), (2, 3, "two in three"), (3, 4, "three in four"), (4, 5, "four in five"),
        (9, 10, "nine in ten"),
    ];

    /// <summary><c>98 times in 100</c>, or what one says near 0 and 1.</summary>
    public static string Times(double probability) => Math.Round(100 * probability) switch
    {
        < 1 => "hardly ever",
        > 99 => "practically always",
        1 => "once in 100",
        double times => string.Create(CultureInfo.InvariantCulture, $"{times:F0} times in 100"),
    };

    /// <summary>The same, but told apart from limits that rounding would make it reach.</summary>
    public static string Times(double probability, params ReadOnlySpan<double> limits)
    {
        double? missed = JustMissed(probability, limits);
        return missed is double limit
            ? string.Create(CultureInfo.InvariantCulture, $"just under {100 * limit:F0} times in 100")
            : Times(probability);
    }

    /// <summary>The number alone, as tables show it; never 0 or 100 for what may still happen or fail, and never rounded up onto one of
    /// the limits, from which a lesson would fit that does not.</summary>
    public static string InHundred(double probability, params ReadOnlySpan<double> limits) => Math.Round(100 * probability) switch
    {
        < 1 => "< 1",
        > 99 => "> 99",
        double times => string.Create(CultureInfo.InvariantCulture, $"{(JustMissed(probability, limits) is null ? times : times - 1):F0}"),
    };

    /// <summary><c>one group in three</c>, or how many in 100 where no simple fraction is near.</summary>
    /// <param name="share">0 to 1.</param>
    /// <param name="one">What is counted, one of it.</param>
    /// <param name="many">Several of it.</param>
    public static string Of(double share, string one, string many)
    {
        (int Some, int Of, string Words) nearest = Fractions.MinBy(f => Math.Abs(share - ((double)f.Some / f.Of)));
        if (Math.Abs(share - ((double)nearest.Some / nearest.Of)) <= 0.025)
        {
            string[] words = nearest.Words.Split(' ', 2);
            return words[1] == "second" ? $"every second {one}" : $"{words[0]} {(nearest.Some == 1 ? one : many)} {words[1]}";
        }

        return Math.Round(100 * share) switch
        {
            < 1 => $"hardly a {one}",
            > 99 => $"nearly every {one}",
            1 => $"1 {one} in 100",
            double number => string.Create(CultureInfo.InvariantCulture, $"{number:F0} {many} in 100"),
        };
    }

    /// <summary>The limit that only rounding would make it reach.</summary>
    private static double? JustMissed(double probability, ReadOnlySpan<double> limits)
    {
        foreach (double limit in limits)
        {
            if (probability < limit && Math.Round(100 * probability) >= 100 * limit)
            {
                return limit;
            }
        }

        return null;
    }
}
