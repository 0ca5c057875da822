using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Watching;

/// <summary>
/// Finds where a group stands. A reading says for certain that all before it is done. What was heard later goes on from there:
/// a step that the group told, its flame lit or put out, its own decision. What was heard before the last reading is overtaken
/// (docs/methods/watching.md).
/// </summary>
internal sealed class StandingRule(PlanSettings plan, LessonRoute route)
{
    private readonly TrialRoute first = new(route, PlanSettings.MostHeatings(plan.Practical), first: true);
    private readonly TrialRoute later = new(route, PlanSettings.MostHeatings(plan.Practical), first: false);

    /// <summary>The route of a trial, from 1.</summary>
    public TrialRoute RouteOf(int trial) => trial == 1 ? first : later;

    /// <summary>Where a group stands.</summary>
    /// <param name="group">The group.</param>
    /// <param name="moment">The moment.</param>
    /// <param name="classBegan">Whether anything was heard of any group.</param>
    public GroupStanding Of(GroupAtWork group, LessonMoment moment, bool classBegan)
    {
        TrialRoute trial = RouteOf(group.Trial);
        if (group.Condition is GroupCondition.Away or GroupCondition.Finished)
        {
            return new GroupStanding { Place = trial.Places.Count, Start = trial.Places.Count, Step = null, IsDone = true };
        }

        Evidence seen = Read(trial, group);
        if (!group.Condition.Weighs)
        {
            return WithoutOwn(trial, group, seen);
        }

        bool together = seen.IsNothing && group.Trial == 1 && moment.WorkBegan is null && !classBegan;
        return together ? Together(moment, trial) : Made(trial, group, moment, seen);
    }

    /// <summary>What is heard of a group after its last reading, in order.</summary>
    private static Evidence Read(TrialRoute trial, GroupAtWork group)
    {
        int last = -1;
        for (int i = 0; i < trial.Places.Count; i++)
        {
            last = trial.Places[i].WeighingId is string id && group.Readings.Find(id) is not null ? i : last;
        }

        double? readAt = last >= 0 && group.Moments.ReadAt.TryGetValue(trial.Places[last].WeighingId!, out double minute) ? minute : null;
        return new Evidence(trial, group.Moments, last, readAt);
    }

    /// <summary>A group that uses other readings goes on with what follows the trials.</summary>
    private static GroupStanding WithoutOwn(TrialRoute trial, GroupAtWork group, Evidence seen)
    {
        int after = trial.Find(0, p => p.Part == RoutePart.After);
        int from = after < 0 ? trial.Places.Count : after;
        int place = group.Moments.Told is ToldStep told ? Math.Max(from, trial.Find(from, p => p.Does(told.StepId))) : from;
        return new GroupStanding
        {
            Place = place,
            Start = from,
            Step = StepAt(trial, place),
            Following = StepAt(trial, place + 1),
            Since = place > from ? group.Moments.Told!.Minute : seen.ReadAt,
            Heat = HeatState.None,
            IsDone = place >= trial.Places.Count,
        };
    }

    /// <summary>Nothing was heard of anybody: the class is at what it does together at first, by its likely times.</summary>
    private GroupStanding Together(LessonMoment moment, TrialRoute trial)
    {
        double began = 0;
        double ends = 0;
        RouteStep? step = null;
        foreach (RouteStep opening in route.Opening)
        {
            if (step is not null && moment.Now < ends)
            {
                break;
            }

            step = opening;
            began = ends;
            ends += opening.Minutes.Likely * opening.Factor;
        }

        return new GroupStanding
        {
            Place = step is null ? 0 : -1,
            Start = 0,
            IsUnheard = true,
            Step = step?.Step ?? StepAt(trial, 0),
            Since = Math.Min(began, moment.Now),
            Heat = trial.Find(0, p => p.Step.Flame) < 0 ? HeatState.None : HeatState.NotBegun,
        };
    }

    private GroupStanding Made(TrialRoute trial, GroupAtWork group, LessonMoment moment, Evidence seen)
    {
        int weighed = Weighed(trial, seen.Last);
        OwnDecision? decided = DecidedOn(trial, group, seen.Last);
        bool heatsOn = decided?.HeatsAgain ?? weighed < plan.Heatings;
        bool decides = weighed > 0 && IsHeatingsLast(trial, seen.Last);
        int start = decides && !seen.HasMore && !heatsOn ? trial.HeatingsEnd : seen.Start;
        int place = seen.HasMore ? seen.Place : start;
        bool goneOn = decides && seen.HasMore && place < trial.HeatingsEnd;
        LessonStep? step = StepAt(trial, place);
        return new GroupStanding
        {
            Place = place,
            Start = seen.Start,
            Step = step,
            Following = step?.Reading is null ? StepAt(trial, place + 1) : null,
            Since = seen.HasMore ? seen.Since : Latest(seen.ReadAt, decided?.Minute) ?? (seen.Last < 0 ? moment.WorkBegan : null),
            ReadAt = seen.ReadAt,
            FlameOut = seen.FlameOut,
            Cooling = seen.Cooling,
            Heating = place < trial.Places.Count && trial.Places[place].Part == RoutePart.Heating ? trial.Places[place].Round + 1 : 0,
            Heat = HeatOf(trial, place, seen.HasMore),
            AwaitsDecision = decides && decided is null && !seen.HasMore && weighed < PlanSettings.MostHeatings(plan.Practical),
            HasGoneOn = goneOn,
            IsUnheard = seen.IsNothing && group.Trial == 1,
            IsDone = place >= trial.Places.Count,
            Weighed = weighed,
            PassedOver =
            [
                .. trial.Places.Take(Math.Max(seen.Last, 0)).Where(p => p.WeighingId is string id && group.Readings.Find(id) is null)
                    .Select(p => ReadingNames.Of(plan.Practical, p.Step.Step.Reading!, p.Occurrence)),
            ],
        };
    }

    private static double? Latest(double? one, double? other) => one is null || other is null ? one ?? other : Math.Max(one.Value, other.Value);

    private static LessonStep? StepAt(TrialRoute trial, int place) => place >= 0 && place < trial.Places.Count ? trial.Places[place].Step.Step : null;

    /// <summary>Heatings after which it has weighed.</summary>
    private static int Weighed(TrialRoute trial, int last) =>
        last >= 0 && trial.Places[last].Part == RoutePart.Heating ? trial.Places[last].Round + 1
        : last >= trial.HeatingsEnd ? trial.Places.Take(trial.HeatingsEnd).Select(p => p.Round + 1).LastOrDefault() : 0;

    /// <summary>Whether nothing of its heating follows a reading.</summary>
    private static bool IsHeatingsLast(TrialRoute trial, int last) =>
        trial.Places[last].Part == RoutePart.Heating
        && (last + 1 >= trial.Places.Count || trial.Places[last + 1].Part != RoutePart.Heating || trial.Places[last + 1].Round > trial.Places[last].Round);

    private static OwnDecision? DecidedOn(TrialRoute trial, GroupAtWork group, int last) =>
        last >= 0 && group.Moments.Decided is OwnDecision own && own.WeighingId == trial.Places[last].WeighingId ? own : null;

    /// <summary>A group that has just weighed comes to the next flame, but nobody has said that it burns.</summary>
    private static HeatState HeatOf(TrialRoute trial, int place, bool hasMore)
    {
        int flame = trial.Find(0, p => p.Step.Flame);
        return flame < 0 ? HeatState.None
            : place < flame || (place == flame && !hasMore) ? HeatState.NotBegun
            : place < trial.Places.Count && trial.Places[place].Step.Flame && hasMore ? HeatState.Burning
            : HeatState.Out;
    }
}
