using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Watching;

/// <summary>A lesson at one moment, made ready to be run on: the same for all simulated lessons and safe for several threads.</summary>
internal sealed class OutlookScene
{
    private readonly Dictionary<int, double[]> freed = [];
    private readonly PlannedMinutes planned;

    /// <summary>Makes it ready.</summary>
    public OutlookScene(
        PlanSettings plan, LessonRoute route, StandingRule standing, IReadOnlyList<GroupAtWork> groups, LessonMoment moment, TypicalPace pace, PlannedMinutes planned)
    {
        (Plan, Route, Moment, Pace) = (plan, route, moment, pace);
        this.planned = planned;
        bool began = LessonWatch.HasBegun(groups);
        bool flamesAreTold = groups.Any(g => g.Moments.FlameOut is not null);
        Groups =
        [
            .. groups.Select(g =>
            {
                GroupStanding at = standing.Of(g, moment, began);
                TrialRoute trial = standing.RouteOf(g.Trial);
                return new KnownGroup(g, at, new GroupChain(trial, Math.Max(0, From(g, at, trial)), flamesAreTold), trial);
            }),
        ];
        IsTogether = !began && moment.WorkBegan is null && route.Opening.Length > 0;
        WorkBegan = moment.WorkBegan ?? (route.Opening.Length == 0 ? 0 : Earliest());
        FlameOut = groups.Select(g => g.Moments.FlameOut ?? 0).DefaultIfEmpty(0).Max();
        Queues = [.. Groups.Select(g => g.Chain.Queue).Where(q => q >= 0).Distinct().Order()];
        foreach (int queue in Queues)
        {
            freed[queue] = [.. Groups.SelectMany(g => FreedBy(g, queue)).Where(m => m <= moment.Now).OrderDescending()];
        }
    }

    /// <summary>The plan, with as many groups as there are.</summary>
    public PlanSettings Plan { get; }

    /// <summary>Its route.</summary>
    public LessonRoute Route { get; }

    /// <summary>The moment.</summary>
    public LessonMoment Moment { get; }

    /// <summary>How fast the class works.</summary>
    public TypicalPace Pace { get; }

    /// <summary>The groups.</summary>
    public IReadOnlyList<KnownGroup> Groups { get; }

    /// <summary>Whether the class is still together, as far as was heard.</summary>
    public bool IsTogether { get; }

    /// <summary>When the groups' own work began, said or reckoned back from what was heard first.</summary>
    public double WorkBegan { get; }

    /// <summary>When the last flame so far was put out; 0 where none was.</summary>
    public double FlameOut { get; }

    /// <summary>What groups may be waiting for at a reading: the route's needs.</summary>
    public IReadOnlyList<int> Queues { get; }

    /// <summary>How many can have it at once.</summary>
    public int UnitsOf(int queue) => Route.Needs[queue].Min(n => Route.Things[n.Resource].Units / n.Units);

    /// <summary>Minutes that a group of the plan waits at a place, on average.</summary>
    public double WaitAt(RoutePlace place) => planned.WaitAt(place);

    /// <summary>When it became free, the given number of times ago; long ago where it was not.</summary>
    public double FreedBefore(int queue, int times) => times <= freed[queue].Length ? freed[queue][times - 1] : double.NegativeInfinity;

    private static IEnumerable<double> FreedBy(KnownGroup group, int queue) => group.Trial.Places
        .Where(p => p.Step.Need == queue && p.WeighingId is not null)
        .Select(p => group.Group.Moments.ReadAt.TryGetValue(p.WeighingId!, out double read) ? read : double.NaN)
        .Where(m => !double.IsNaN(m));

    /// <summary>Where a group goes on: where the plan's rule heats again and the group has not decided, it does; after the last
    /// call nobody begins another heating.</summary>
    private int From(GroupAtWork group, GroupStanding at, TrialRoute trial)
    {
        bool atChoice = at.Weighed > 0 && !at.HasGoneOn && at.Place == at.Start && at.Place < trial.HeatingsEnd;
        if (atChoice && Moment.Now > Moment.LastHeatingStartsBy)
        {
            return trial.HeatingsEnd;
        }

        bool decides = at.AwaitsDecision && at.Place == trial.HeatingsEnd && !(Moment.Now > Moment.LastHeatingStartsBy);
        return decides && StillChanges(group) ? at.Start : at.Place;
    }

    /// <summary>The trade's rule on the last two weighings, by which plans let groups heat again.</summary>
    private bool StillChanges(GroupAtWork group)
    {
        if (Plan.Heatings == 1 || Plan.Practical.Findings.ConstantMass is not ConstantMassDefinition rule)
        {
            return false;
        }

        TakenReading[] weighings = [.. group.Readings.RepeatsOf(rule.Reading)];
        decimal tolerance = (decimal)rule.ToleranceInDivisions * (decimal)group.Balance.ResolutionInGrams;
        return weighings.Length >= 2 && Math.Abs(weighings[^1].Value.Value - weighings[^2].Value.Value) > tolerance;
    }

    /// <summary>When work began, reckoned back: from what was heard of each group first, the mean times of all before it; the earliest
    /// counts.</summary>
    private double Earliest()
    {
        double earliest = Moment.Now;
        foreach (KnownGroup known in Groups)
        {
            double before = 0;
            foreach (RoutePlace place in known.Trial.Places)
            {
                if (known.Group.Moments.Told is ToldStep told && place.Does(told.StepId))
                {
                    earliest = Math.Min(earliest, told.Minute - before);
                }

                before += place.Step.Minutes.Mean * place.Step.Factor;
                if (place.WeighingId is string id && known.Group.Moments.ReadAt.TryGetValue(id, out double read))
                {
                    earliest = Math.Min(earliest, read - before);
                }
            }
        }

        return Math.Max(0, earliest);
    }
}
