using System.Globalization;
using System.Text.RegularExpressions;

namespace Calx.Practicals.Readings;

/// <summary>A heading over the points of one time: <c>0.5 min</c>, <c>Mass at 30 s / g</c>, <c>Mass lost after 1 min 30 s</c>.</summary>
/// <param name="Minutes">The time in min.</param>
/// <param name="IsLoss">Whether the mass lost stands below it.</param>
/// <param name="Unit">Unit of the masses, or null where none is named.</param>
internal sealed partial record TimeHeading(decimal Minutes, bool IsLoss, string? Unit)
{
    /// <summary>Reads a heading, or gives null where it names no time.</summary>
    public static TimeHeading? Of(string heading)
    {
        (string rest, string? unit) = HeadingUnit.Split(heading);
        bool ofMass = unit is "g" or "mg" or "kg";
        return TimeIn(ofMass ? rest : heading) is decimal minutes
            ? new TimeHeading(minutes, IsLost(heading), ofMass ? unit : null)
            : null;
    }

    /// <summary>Whether a heading speaks of what was lost and not of what is left.</summary>
    public static bool IsLost(string heading) => Lost().IsMatch(heading);

    /// <summary>The unit of a heading of times, <c>Time / s</c>: minutes in one of it; null where it is none. Without a unit it takes
    /// that of the practical.</summary>
    public static decimal? UnitOf(string heading, decimal usual)
    {
        Match match = Times().Match(heading);
        return !match.Success ? null
            : match.Groups["s"].Success ? 1m / 60
            : match.Groups["min"].Success ? 1
            : match.Groups["h"].Success ? 60
            : usual;
    }

    /// <summary>A time that stands by itself, in min; a bare number is in the given unit.</summary>
    public static decimal? Alone(string text, decimal minutesInUnit)
    {
        ReadOnlySpan<char> trimmed = NumberText.Trim(text);
        return Clock().Match(trimmed.ToString()) is { Success: true } clock
            ? Number(clock.Groups["m"]) + (Number(clock.Groups["s"]) / 60)
            : decimal.TryParse(trimmed.ToString().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal bare)
                && bare < 100_000 ? bare * minutesInUnit : TimeIn(trimmed.ToString());
    }

    private static decimal? TimeIn(string text)
    {
        MatchCollection found = Parts().Matches(text);
        decimal minutes = 0;
        foreach (Match part in found)
        {
            minutes += Number(part.Groups["n"]) * (part.Groups["s"].Success ? 1m / 60 : part.Groups["h"].Success ? 60 : 1);
        }

        return found.Count is 1 or 2 ? decimal.Round(minutes, 8) : null;
    }

    private static decimal Number(Group group) =>
        decimal.Parse(group.Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<![\w.,])(?<n>\d{1,6}(?:[.,]\d{1,6})?)\s*(?:(?<s>s|secs?|seconds?)|(?<min>m|mins?|minutes?)|(?<h>h|hours?))(?![\w])", RegexOptions.IgnoreCase)]
    private static partial Regex Parts();

    [GeneratedRegex(@"\b(lost|loss|losses)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Lost();

    [GeneratedRegex(@"^\s*(elapsed\s+)?(time|t|minutes?|seconds?|clock)\b[\s/(\[,:in]*((?<s>s|secs?|seconds?)|(?<min>mins?|minutes?)|(?<h>h|hours?))?[\s)\].]*$", RegexOptions.IgnoreCase)]
    private static partial Regex Times();

    [GeneratedRegex(@"^(?<m>\d{1,3}):(?<s>[0-5]\d)$")]
    private static partial Regex Clock();
}
