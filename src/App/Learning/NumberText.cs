using System.Globalization;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.App.Learning;

/// <summary>Numbers that are accepted, as they are kept: a share in figures, or least, likely and most minutes with spaces between. In the
/// decimals that a teacher was shown, so that what is accepted is what was seen.</summary>
public static class NumberText
{
    /// <summary>What stands before the id of a step, a cause or a piece.</summary>
    public const string Time = "time:", Fault = "fault:", Kit = "kit:";

    /// <summary>The value in the practical's file.</summary>
    public static string Before(LearnedChange change) => change switch
    {
        LearnedChange.Time time => Of(time.Before),
        LearnedChange.Rate rate => Of(rate.Before),
        _ => throw new ArgumentException("No other change exists.", nameof(change)),
    };

    /// <summary>The value that past lessons would have.</summary>
    public static string After(LearnedChange change) => change switch
    {
        LearnedChange.Time time => Of(time.After),
        LearnedChange.Rate rate => Of(rate.After),
        _ => throw new ArgumentException("No other change exists.", nameof(change)),
    };

    /// <summary>Three times, each of them to a tenth of a minute; short ones to a hundredth.</summary>
    public static string Of(StepMinutes minutes) => string.Join(' ', ((double[])[minutes.Least, minutes.Likely, minutes.Most]).Select(Minutes));

    /// <summary>A share to a thousandth.</summary>
    public static string Of(double share) => share.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Three times, or null where the text is none.</summary>
    public static StepMinutes? MinutesOf(string text)
    {
        double[] numbers = [.. text.Split(' ').Select(Number)];
        return numbers is [double least, double likely, double most] && least >= 0 && least <= likely && likely <= most && most is > 0 and <= PlanSettings.LongestLesson
            ? new StepMinutes(least, likely, most) : null;
    }

    /// <summary>A share, or null where the text is none.</summary>
    public static double? ShareOf(string text) => Number(text) is double share and >= 0 and <= 1 ? share : null;

    /// <summary>Minutes for people and for the records alike.</summary>
    public static string Minutes(double minutes) => minutes.ToString(minutes < 5 ? "0.##" : "0.#", CultureInfo.InvariantCulture);

    private static double Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : double.NaN;
}
