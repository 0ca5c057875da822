using Calx.Practicals.Clock;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>The sentences on how a lesson goes on.</summary>
internal static class OutlookWords
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> Of(LessonOutlook outlook, Func<int, string?> whereIs)
    {
        var texts = new OutlookTexts(outlook.Language);
        string odds = Odds.Times(outlook.Fits.Value, outlook.Language, LessonForecast.FitsNot, LessonForecast.FitsWell);
        return
        [
            outlook.HasFlame ? texts.Chance(odds) : texts.ChanceWithoutFlame(odds),
            .. Call(outlook, texts),
            outlook.WaitsFor is int group && whereIs(group) is string place ? texts.WaitsNow(outlook.Bottleneck.TrimEnd('.'), place) : outlook.Bottleneck,
        ];
    }

    private static IEnumerable<string> Call(LessonOutlook outlook, OutlookTexts texts)
    {
        if (outlook.Calls.Heating is double call)
        {
            yield return call >= outlook.Moment.Now
                ? texts.LastHeatingIn(call.InFigures("F0"), (call - outlook.Moment.Now).InFigures("F0"))
                : texts.LastHeatingPassed(call.InFigures("F0"));
        }
    }

    /// <summary>What groups wait for, or whom the end waits for.</summary>
    public static string Bottleneck(IReadOnlyList<ThingUse> uses, GroupOutlook? last, double lastShare, EngineLanguage language)
    {
        var texts = new OutlookTexts(language);
        if (uses.MaxBy(u => u.MeanWait) is ThingUse longest && longest.MeanWait >= WaitThatCounts)
        {
            return texts.GroupWaits(longest.MeanWait.InFigures("F0"), longest.Thing.Label);
        }

        return last is null ? texts.NothingLeft : texts.EndWaits(last.Group.InFigures(), (100 * lastShare).InFigures("F0"));
    }

    /// <summary>Whether a queue is what keeps the rest of the lesson longest.</summary>
    public static bool QueueMatters(IReadOnlyList<ThingUse> uses) => uses.Any(u => u.MeanWait >= WaitThatCounts);

    /// <summary>A wait of so many minutes, added up over the rest of a group's lesson, is the bottleneck (judgement).</summary>
    private const double WaitThatCounts = 2;
}
