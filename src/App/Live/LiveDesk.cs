using System.Runtime.CompilerServices;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.App.Live;

/// <summary>
/// Asks the engine about a lesson, once for all who look at it: the answer is kept until the lesson moves on, and for at most
/// ten seconds, since minutes pass. The clock's forecast, which runs hundreds of lessons, and the class's values are worked out aside:
/// where they take long the last ones stand meanwhile.
/// </summary>
public sealed class LiveDesk(KnownBalances school, TimeProvider clock)
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(10);

    /// <summary>How long a page waits for what is newer than what it has, and for what it has not at all.</summary>
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(1), Patience = TimeSpan.FromSeconds(3);

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
        Kept of = Of(view);
        if (of.Fresh(view, Time - Longest) is LiveFacts known)
        {
            return known;
        }

        // Nobody blocks a thread while the model is made ready, which takes seconds on a busy machine.
        await view.Room.Ready.WaitAsync(cancellation);
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

    /// <summary>What the wall shows. It waits a few seconds at most.</summary>
    public async Task<WallFacts> Wall(LessonView view, CancellationToken cancellation)
    {
        Kept of = Of(view);
        LetteredBalances balances = await school.Now(cancellation);
        GroupAtWork[] groups = [.. view.Groups.Select(g => AtWork.Of(view, balances, g))];
        LessonMoment moment = MomentOf(view);
        LessonOutlook? outlook = await Outlook(view, of, groups, moment, Patience, cancellation);
        (ClassFindings? findings, bool isLatest) = await of.Findings.Ask(
            view.Number, () => LessonFindings.OfKey(view, balances), of.Findings.Known is null ? Patience : Moment, cancellation);
        return new WallFacts(view, view.Room.Watch.Now(groups, moment), outlook, findings, !isLatest && findings is null);
    }

    private Kept Of(LessonView view) => kept.GetValue(view.Room, room => new Kept(room));

    private LessonMoment MomentOf(LessonView view) => new(
        view.MinuteAt(Time) ?? 0, view.BellMinute, view.State.WorkBeganAt is DateTimeOffset began ? view.MinuteAt(began) : null);

    private async Task<LiveFacts> Ask(LessonView view, Kept of, CancellationToken cancellation)
    {
        LetteredBalances balances = await school.Now(cancellation);
        LessonWatch watch = view.Room.Watch;
        GroupAtWork[] groups = [.. view.Groups.Select(g => AtWork.Of(view, balances, g))];
        LessonMoment planned = MomentOf(view);
        // What a group is told rests on the last call: without one that holds for this bell nothing is said.
        LessonOutlook? outlook = await Outlook(view, of, groups, planned, Timeout.InfiniteTimeSpan, cancellation);
        var moment = new LessonMoment(planned.Now, planned.Bell, planned.WorkBegan, outlook?.Calls.Heating);
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

    /// <summary>The forecast, anew every ten seconds, and at once where the bell has moved or the groups have begun.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="of">What is kept of it.</param>
    /// <param name="groups">Its groups.</param>
    /// <param name="moment">The moment.</param>
    /// <param name="patience">How long to wait where none holds for this bell.</param>
    /// <param name="cancellation">Ends the waiting.</param>
    private async Task<LessonOutlook?> Outlook(
        LessonView view, Kept of, GroupAtWork[] groups, LessonMoment moment, TimeSpan patience, CancellationToken cancellation)
    {
        if (view.State.BeganAt is null || view.State.IsOver || view.State.IsCover)
        {
            return null;
        }

        while (true)
        {
            (LessonOutlook? found, bool isLatest) = await of.Outlook.Ask(
                (moment.Bell, moment.WorkBegan, Time.Ticks / Longest.Ticks),
                () => view.Room.Watch.Outlook(groups, moment, parallel: OneThread),
                Holds(of.Outlook.Known) ? Moment : patience,
                cancellation);
            // Somebody may have asked for another bell meanwhile, and the forecast is that one.
            if (Holds(found) || !isLatest)
            {
                return Holds(found) ? found : null;
            }
        }

        bool Holds(LessonOutlook? outlook) => outlook is not null && outlook.Moment.Bell == moment.Bell && outlook.Moment.WorkBegan == moment.WorkBegan;
    }

    /// <summary>The last answer for a room, and the advice for its groups.</summary>
    private sealed class Kept
    {
        private readonly Dictionary<int, (string Key, Advice Advice)> advices = [];
        private volatile Answer? last;

        public Kept(LessonRoom room) => (Outlook, Findings) = (new SlowAnswer<LessonOutlook>(room.Tell), new SlowAnswer<ClassFindings>(room.Tell));

        public SemaphoreSlim Gate { get; } = new(1);

        public SlowAnswer<LessonOutlook> Outlook { get; }

        public SlowAnswer<ClassFindings> Findings { get; }

        public LiveFacts? Fresh(LessonView view, DateTimeOffset notBefore) =>
            last is Answer answer && answer.Facts.View.Number == view.Number && answer.At >= notBefore
            && (answer.Facts.Outlook is null || ReferenceEquals(answer.Facts.Outlook, Outlook.Known)) ? answer.Facts : null;

        public LiveFacts Keep(LiveFacts facts, DateTimeOffset at)
        {
            last = new Answer(facts, at);
            return facts;
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
