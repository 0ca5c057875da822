using Calx.Practicals.Texts;

namespace Calx.Practicals.Clock;

/// <summary>Probabilities as a teacher says them.</summary>
public static class Odds
{
    /// <summary><c>98 times in 100</c>, or what one says near 0 and 1; told apart from limits that rounding would make it reach.</summary>
    /// <param name="probability">0 to 1.</param>
    /// <param name="language">In which language.</param>
    /// <param name="limits">The limits; none where nothing depends on it.</param>
    public static string Times(double probability, EngineLanguage language, params ReadOnlySpan<double> limits)
    {
        var texts = new OddsTexts(language);
        return JustMissed(probability, limits) is double limit ? texts.JustUnder((100 * limit).InFigures("F0")) : Math.Round(100 * probability) switch
        {
            < 1 => texts.HardlyEver,
            > 99 => texts.PracticallyAlways,
            1 => texts.Once,
            double times => texts.Times(times.InFigures("F0")),
        };
    }

    /// <summary>The number alone, as tables show it; never 0 or 100 for what may still happen or fail, and never rounded up onto one of
    /// the limits, from which a lesson would fit that does not.</summary>
    public static string InHundred(double probability, params ReadOnlySpan<double> limits) => Math.Round(100 * probability) switch
    {
        < 1 => "< 1",
        > 99 => "> 99",
        double times => (JustMissed(probability, limits) is null ? times : times - 1).InFigures("F0"),
    };

    /// <summary><c>one group in three</c>, or how many in 100 where no simple fraction is near.</summary>
    /// <param name="share">0 to 1.</param>
    /// <param name="language">In which language.</param>
    public static string OfGroups(double share, EngineLanguage language)
    {
        var texts = new OddsTexts(language);
        (int Some, int Of, string Words)[] fractions =
        [
            (1, 10, texts.OneInTen), (1, 5, texts.OneInFive), (1, 4, texts.OneInFour), (1, 3, texts.OneInThree), (2, 5, texts.TwoInFive),
            (1, 2, texts.EverySecond), (3, 5, texts.ThreeInFive), (2, 3, texts.TwoInThree), (3, 4, texts.ThreeInFour), (4, 5, texts.FourInFive),
            (9, 10, texts.NineInTen),
        ];
        (int Some, int Of, string Words) nearest = fractions.MinBy(f => Math.Abs(share - ((double)f.Some / f.Of)));
        return Math.Abs(share - ((double)nearest.Some / nearest.Of)) <= 0.025 ? nearest.Words : Math.Round(100 * share) switch
        {
            < 1 => texts.HardlyAGroup,
            > 99 => texts.NearlyEvery,
            1 => texts.OneInHundred,
            double number => texts.InHundred(number.InFigures("F0")),
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
