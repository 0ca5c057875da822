using System.Globalization;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>Probabilities as a teacher reads them.</summary>
internal static class Percents
{
    /// <summary>In whole per cent, never 0 or 100 for what is not impossible or certain: '84 %', 'over 99 %'.</summary>
    public static string Of(double probability) => probability switch
    {
        > 0.99 => "over 99 %",
        < 0.01 => "under 1 %",
        _ => string.Create(CultureInfo.InvariantCulture, $"{100 * probability:F0} %"),
    };
}
