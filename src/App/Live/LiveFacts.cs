using Calx.Practicals.Watching;

namespace Calx.App.Live;

/// <summary>What the engine says of a lesson at one moment.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Moment">The moment.</param>
/// <param name="Balances">The school's balances.</param>
/// <param name="Groups">Each group, in the order of their numbers.</param>
/// <param name="Outlook">What the clock expects from where the groups are; null before the lesson has begun and once it is over.</param>
public sealed record LiveFacts(
    LessonView View, LessonMoment Moment, LetteredBalances Balances, IReadOnlyList<GroupFacts> Groups, LessonOutlook? Outlook)
{
    /// <summary>The time of a minute of the lesson; null before it has begun.</summary>
    public DateTimeOffset? TimeOf(double? minute) => minute is double m && View.State.BeganAt is DateTimeOffset began ? began.AddMinutes(m) : null;
}
