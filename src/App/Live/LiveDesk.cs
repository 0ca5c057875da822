using System.Runtime.CompilerServices;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.App.Live;

/// <summary>
/// Asks the engine about a lesson, once for all who look at it: the answer is kept until the lesson moves on, and for at most
/// ten seconds, since minutes pass. The clock's forecast, which runs hundreds of lessons, is kept for those ten seconds
/// whatever is typed meanwhile.
/// </summary>
public sealed class LiveDesk(KnownBalances school, TimeProvider clock)
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    /// <summary>A forecast that took every processor for itself would hold up the entries of all lessons.</summary>
    private static readonly ParallelOptions OneThread = new() { MaxDegreeOfParallelism = 1 };

    /// <summary>What the class puts in is learned from its readings; one group more or less hardly changes it.</summary>
    private const int ClassmatesThatCount = 4;

    private readonly ConditionalWeakTable<LessonRoom, Kept> kept = [];

    /// <summary>The time.</summary>
    public DateTimeOffset Time => clock.GetUtcNow();

    /// <summary>What the engine says now.</summary>
    public async Task<LiveFacts> Facts(LessonView view, CancellationToken cancellation)
    {
        Kept of = kept.GetOrCreateValue(view.Room);
        if (of.Fresh(view, Time - Longest) is LiveFacts known)
        {
            return known;
        }

        await of.Gate.WaitAsync(cancellation);
        try
        {
            return of.Fresh(view, Time - Longest) ?? of.Keep(await Ask(view, of, cancellation), Time);
        }
        finally
        {
            of.Gate.Release();
        }
    }

    private async Task<LiveFacts> Ask(LessonView view, Kept of, CancellationToken cancellation)
    {
        LetteredBalances balances = await school.Now(cancellation);
        LessonWatch watch = view.Room.Watch;
        GroupAtWork[] groups = [.. view.Groups.Select(g => AtWork.Of(view, balances, g))];
        LessonState state = view.State;
        double now = view.MinuteAt(Time) ?? 0;
        double? workBegan = state.WorkBeganAt is DateTimeOffset began ? view.MinuteAt(began) : null;
        LessonOutlook? outlook = state.BeganAt is null || state.IsOver || state.IsCover
            ? null : of.Outlook(new LessonMoment(now, view.BellMinute, workBegan), Time, moment => watch.Outlook(groups, moment, parallel: OneThread));
        var moment = new LessonMoment(now, view.BellMinute, workBegan, outlook?.Calls.Heating);
        IReadOnlyList<GroupNow> nows = watch.Now(groups, moment);
        GroupReadings[] classmates = [.. groups.Where(g => g.Condition.Weighs && g.Readings.Readings.Count > 1).Select(g => g.Readings)];
        var facts = new List<GroupFacts>(groups.Length);
        foreach ((GroupAtWork group, GroupNow at) in groups.Zip(nows))
        {
            GroupAtWork weighing = AtWork.AsIfWeighing(group);
            Advice advice = of.Advice(weighing, moment, classmates.Length / ClassmatesThatCount, () => watch.AdviceFor(weighing, moment, classmates.Length > 2 ? classmates : null));
            facts.Add(new GroupFacts(group, at, advice, watch.AttentionFor(group, advice, moment)));
        }

        return new LiveFacts(view, moment, balances, facts, outlook);
    }

    /// <summary>The last answer for a room, and the advice for its groups.</summary>
    private sealed class Kept
    {
        private readonly Dictionary<int, (string Key, Advice Advice)> advices = [];
        private volatile Answer? last;
        private LessonOutlook? outlook;
        private DateTimeOffset outlookAt;

        public SemaphoreSlim Gate { get; } = new(1);

        public LiveFacts? Fresh(LessonView view, DateTimeOffset notBefore) =>
            last is Answer answer && answer.Facts.View.Number == view.Number && answer.At >= notBefore ? answer.Facts : null;

        public LiveFacts Keep(LiveFacts facts, DateTimeOffset at)
        {
            last = new Answer(facts, at);
            return facts;
        }

        /// <summary>The forecast, anew after ten seconds, and at once where the bell has moved or the groups have begun.</summary>
        public LessonOutlook Outlook(LessonMoment moment, DateTimeOffset now, Func<LessonMoment, LessonOutlook> ask)
        {
            if (outlook is not LessonOutlook known || now - outlookAt > Longest || known.Moment.Bell != moment.Bell || known.Moment.WorkBegan != moment.WorkBegan)
            {
                (outlook, outlookAt) = (known = ask(moment), now);
            }

            return known;
        }

        /// <summary>Advice is the dearest to work out, and changes only with the group's own readings and observations, with the
        /// number of others that say what the class puts in (by fours), and with the last call.</summary>
        public Advice Advice(GroupAtWork group, LessonMoment moment, int classmates, Func<Advice> ask)
        {
            string key = FormattableString.Invariant(
                $"{group.Trial};{group.Condition};{string.Join(',', group.Readings.Readings)};{string.Join(',', group.Moments.ReadAt.Values)};{string.Join(',', group.Readings.Remarks.Observations)};{group.Moments.FlameOut};{group.Moments.FlameLit};{group.Moments.Decided};{group.Balance.ResolutionInGrams};{classmates};{moment.Now > moment.LastHeatingStartsBy}");
            if (!advices.TryGetValue(group.Number, out (string Key, Advice Advice) known) || known.Key != key)
            {
                advices[group.Number] = known = (key, ask());
            }

            return known.Advice;
        }

        private sealed record Answer(LiveFacts Facts, DateTimeOffset At);
    }
}
