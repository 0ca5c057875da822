using System.Collections.Concurrent;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Clock;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Watching;

/// <summary>
/// A lesson while it runs: where each group stands, what it is to do, what needs the teacher, whether a reading is asked about.
/// Made once for a lesson and its plan; it keeps nothing of what happens, so that the same question has the same answer. Safe
/// for several threads. See docs/methods/watching.md.
/// </summary>
public sealed class LessonWatch
{
    private readonly Lazy<WatchModel> model;
    private readonly Lazy<QueryRule> query;
    private readonly StandingRule standing;
    private readonly CoolingRule cooling;
    private readonly LessonRoute route;
    private readonly StepCautions[] cautions;
    private readonly PlanTables tables;
    private readonly ConcurrentDictionary<int, Lazy<OutlookRule>> outlooks = new();

    /// <summary>Makes a lesson ready.</summary>
    /// <param name="plan">What the teacher means to do.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="seed">The lesson's seed: which readings are asked about anyway, and which lessons are simulated.</param>
    public LessonWatch(PlanSettings plan, AtomicWeights weights, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(weights);
        Plan = plan;
        Seed = seed;
        tables = new PlanTables(weights);
        route = new LessonRoute(plan, tables.Durations);
        standing = new StandingRule(plan, route);
        cooling = new CoolingRule(plan.Practical);
        cautions = [new StepCautions(plan.Practical, standing.RouteOf(1), plan.Language), new StepCautions(plan.Practical, standing.RouteOf(2), plan.Language)];
        // The model takes longest to make ready, and a page that only shows steps does without it.
        model = new Lazy<WatchModel>(() => new WatchModel(plan, weights));
        query = new Lazy<QueryRule>(() => new QueryRule(plan, weights, seed));
    }

    /// <summary>The plan.</summary>
    public PlanSettings Plan { get; }

    /// <summary>The lesson's seed.</summary>
    public ulong Seed { get; }

    /// <summary>Makes the model ready now, so that the first reading does not wait for it.</summary>
    public void WarmUp() => _ = (model.Value, query.Value, outlooks.GetOrAdd(Plan.Groups, n => new Lazy<OutlookRule>(() => OutlookFor(n))).Value);

    /// <summary>Where a group stands.</summary>
    /// <param name="group">The group.</param>
    /// <param name="moment">The moment.</param>
    /// <param name="classBegan">Whether anything was heard of any group yet: until then the class is together.</param>
    public GroupNow Now(GroupAtWork group, LessonMoment moment, bool classBegan)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(moment);
        GroupStanding at = standing.Of(group, moment, classBegan);
        return new GroupNow(group, at, cautions[group.Trial == 1 ? 0 : 1].Of(at.Place), NextOf(group, at), CoolAt(group, at));
    }

    /// <summary>Where all groups stand, in the order given.</summary>
    public IReadOnlyList<GroupNow> Now(IReadOnlyList<GroupAtWork> groups, LessonMoment moment)
    {
        bool began = HasBegun(groups);
        return [.. groups.Select(g => Now(g, moment, began))];
    }

    /// <summary>Whether anything was heard of any group.</summary>
    public static bool HasBegun(IReadOnlyList<GroupAtWork> groups) => groups.Any(g =>
        g.Readings.Readings.Count > 0 || g.Trial > 1 || g.Moments.FlameLit is not null || g.Moments.FlameOut is not null || g.Moments.Told is not null);

    /// <summary>What a group is to do now. A few milliseconds once the model is ready.</summary>
    /// <param name="group">The group.</param>
    /// <param name="moment">The moment; after its last call nobody is told to heat again.</param>
    /// <param name="classmates">The readings of all groups, which say what this class puts in; null for the plan's amount.</param>
    public Advice AdviceFor(GroupAtWork group, LessonMoment moment, IReadOnlyList<GroupReadings>? classmates = null)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(moment);
        return new AdviceRule(Plan, route, model).Of(group, standing.Of(group, moment, classBegan: true), moment, classmates);
    }

    /// <summary>What needs the teacher in a group.</summary>
    /// <param name="group">The group.</param>
    /// <param name="advice">What it is to do.</param>
    /// <param name="moment">The moment.</param>
    public Attention AttentionFor(GroupAtWork group, Advice advice, LessonMoment moment)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(advice);
        ArgumentNullException.ThrowIfNull(moment);
        return new AttentionRule(standing, Plan.Language).Of(group, standing.Of(group, moment, classBegan: true), advice, moment);
    }

    /// <summary>Whether a student who has typed a reading is asked to look again. Nothing is asked in an assessed lesson.</summary>
    /// <param name="group">The group with its readings so far; the one in question may be among them.</param>
    /// <param name="weighing">Which reading was typed.</param>
    /// <param name="written">The number as typed.</param>
    /// <param name="entry">The bits of the entry's id: the same entry is answered alike each time.</param>
    /// <param name="assessed">Whether the lesson is assessed.</param>
    /// <exception cref="ArgumentException">The practical has no such reading.</exception>
    public ReadingQuery QueryFor(GroupAtWork group, Weighing weighing, WrittenNumber written, UInt128 entry, bool assessed = false)
    {
        ArgumentNullException.ThrowIfNull(group);
        return assessed ? new ReadingQuery.None() : query.Value.Of(group, weighing, written, entry);
    }

    /// <summary>How the lesson goes on from where its groups are. Some tens of milliseconds once it was asked before.</summary>
    /// <param name="groups">All groups of the lesson, at least one, each once.</param>
    /// <param name="moment">The moment; a bell that moved is told here.</param>
    /// <param name="lessons">How many lessons are simulated, from 1.</param>
    /// <param name="parallel">Threads and cancellation; null for all threads.</param>
    /// <exception cref="ArgumentException">There is no group, or one number twice.</exception>
    /// <exception cref="OperationCanceledException">The work was given up.</exception>
    public LessonOutlook Outlook(
        IReadOnlyList<GroupAtWork> groups, LessonMoment moment, int lessons = OutlookRule.UsualLessons, ParallelOptions? parallel = null)
    {
        ArgumentNullException.ThrowIfNull(groups);
        ArgumentNullException.ThrowIfNull(moment);
        ArgumentOutOfRangeException.ThrowIfLessThan(lessons, 1);
        GroupAtWork[] inOrder = [.. groups.OrderBy(g => g.Number)];
        if (inOrder.Length is 0 or > PlanSettings.MostGroups || inOrder.DistinctBy(g => g.Number).Count() != inOrder.Length)
        {
            throw new ArgumentException("One group at least is expected, and each once.", nameof(groups));
        }

        OutlookRule rule = outlooks.GetOrAdd(inOrder.Length, number => new Lazy<OutlookRule>(() => OutlookFor(number))).Value;
        return rule.Of(inOrder, moment, lessons, parallel ?? new ParallelOptions());
    }

    /// <summary>A class may have other groups than its plan: what is shared is then shared by those that are there.</summary>
    private OutlookRule OutlookFor(int groups)
    {
        PlanSettings live = groups == Plan.Groups ? Plan : Plan.WithClass(groups, Math.Max(groups, Plan.Students));
        return new OutlookRule(live, tables.DrawersOf(live), tables.Durations, Seed);
    }

    private NextReading? NextOf(GroupAtWork group, GroupStanding at)
    {
        if (at.IsDone || !group.Condition.Weighs)
        {
            return null;
        }

        TrialRoute trial = standing.RouteOf(group.Trial);
        int next = trial.Find(Math.Max(at.Place, 0), p => p.WeighingId is string id && group.Readings.Find(id) is null);
        if (next < 0)
        {
            return null;
        }

        var weighing = new Weighing(trial.Places[next].Step.Step.Reading!, trial.Places[next].Occurrence);
        var reading = Plan.Practical.Reading(weighing.Reading);
        return new NextReading(
            weighing, WeighingLabel.Of(Plan.Practical, weighing), reading.Unit, reading.Gauge is null ? group.Balance.Decimals : null);
    }

    private double? CoolAt(GroupAtWork group, GroupStanding at)
    {
        TrialRoute trial = standing.RouteOf(group.Trial);
        return at.FlameOut is double put && at.Cooling >= 0 && at.Cooling < trial.Places.Count
            && trial.Places[at.Cooling].Step is { Minutes: var minutes, Step: var cools }
            // Without a curve only the step's own time is known, and reading something takes no time to cool.
            && (Plan.Practical.Cooling is not null || cools.Reading is null)
            ? put + cooling.MinutesFor(group.Balance, minutes.Least, minutes.Most)
            : null;
    }
}
