using Calx.Practicals.Findings;
using Calx.Practicals.Watching;

namespace Calx.App.Live;

/// <summary>What the engine says for the wall, which is never waited for long: no advice and no causes are worked out.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Groups">Where each group stands, in the order of their numbers.</param>
/// <param name="Outlook">What the clock expects; null where that is not known yet.</param>
/// <param name="Findings">What the readings show, or showed a moment ago; null where there are none.</param>
/// <param name="IsAwaited">Whether readings are there and nothing is known of them yet.</param>
public sealed record WallFacts(LessonView View, IReadOnlyList<GroupNow> Groups, LessonOutlook? Outlook, ClassFindings? Findings, bool IsAwaited)
{
    /// <summary>The time of a minute of the lesson; null before it has begun.</summary>
    public DateTimeOffset? TimeOf(double? minute) => minute is double m && View.State.BeganAt is DateTimeOffset began ? began.AddMinutes(m) : null;
}
