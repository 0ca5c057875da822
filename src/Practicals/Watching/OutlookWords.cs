using System.Globalization;
using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>The sentences on how a lesson goes on.</summary>
internal static class OutlookWords
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> Of(LessonOutlook outlook, Func<int, string?> whereIs) =>
    [
        $"From here all is done and the gas off in time {Odds.Times(outlook.Fits.Value, LessonForecast.FitsNot, LessonForecast.FitsWell)}.",
        .. Call(outlook),
        outlook.WaitsFor is int group && whereIs(group) is string place ? $"{outlook.Bottleneck[..^1]}, now: {place}." : outlook.Bottleneck,
    ];

    private static IEnumerable<string> Call(LessonOutlook outlook)
    {
        if (outlook.Calls.Heating is double call)
        {
            yield return call >= outlook.Moment.Now
                ? string.Create(CultureInfo.InvariantCulture, $"Last heating starts by minute {call:F0}: in {call - outlook.Moment.Now:F0} min.")
                : string.Create(CultureInfo.InvariantCulture, $"Last heating starts by minute {call:F0}: that has passed, begin no more.");
        }
    }

    /// <summary>What groups wait for, or whom the end waits for.</summary>
    public static string Bottleneck(IReadOnlyList<ThingUse> uses, GroupOutlook? last, double lastShare)
    {
        if (uses.MaxBy(u => u.MeanWait) is ThingUse longest && longest.MeanWait >= WaitThatCounts)
        {
            return string.Create(CultureInfo.InvariantCulture, $"A group still waits {longest.MeanWait:F0} min for {longest.Thing.Label} until the end.");
        }

        return last is null ? "Nothing is left to wait for."
            : string.Create(
                CultureInfo.InvariantCulture,
                $"No queue matters; the end most often waits for group {last.Group} ({100 * lastShare:F0} in 100).");
    }

    /// <summary>Whether a queue is what keeps the rest of the lesson longest.</summary>
    public static bool QueueMatters(IReadOnlyList<ThingUse> uses) => uses.Any(u => u.MeanWait >= WaitThatCounts);

    /// <summary>A wait of so many minutes, added up over the rest of a group's lesson, is the bottleneck (judgement).</summary>
    private const double WaitThatCounts = 2;
}
