using Calx.Practicals.Clock;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.Watching;

/// <summary>Runs the rest of a lesson many times: the plan's clock from where its groups are. The same seed gives the same on any
/// number of threads.</summary>
internal sealed class OutlookRule
{
    /// <summary>From so many lessons a probability is known to 0.025.</summary>
    public const int UsualLessons = 400;

    /// <summary>So many lessons set the last calls, as in a plan.</summary>
    private const int LessonsForCalls = 600;

    private const int BlockSize = 25;

    private readonly PlanSettings plan;
    private readonly GroupDrawer[] drawers;
    private readonly DurationTable durations;
    private readonly PlannedMinutes planned;
    private readonly TrialRoute first;
    private readonly ulong seed;

    /// <summary>Makes a plan ready.</summary>
    public OutlookRule(PlanSettings plan, GroupDrawer[] drawers, DurationTable durations, ulong seed)
    {
        (this.plan, this.drawers, this.durations, this.seed) = (plan, drawers, durations, seed);
        var route = new LessonRoute(plan, durations);
        first = new StandingRule(plan, route).RouteOf(1);
        planned = new PlannedMinutes(plan, route, ReheatsOf(plan), seed);
    }

    /// <summary>Forecasts.</summary>
    /// <param name="all">The groups, at least one, in the order of their numbers.</param>
    /// <param name="moment">The moment.</param>
    /// <param name="lessons">How many lessons.</param>
    /// <param name="parallel">Threads and cancellation.</param>
    public LessonOutlook Of(IReadOnlyList<GroupAtWork> all, LessonMoment moment, int lessons, ParallelOptions parallel)
    {
        TypicalPace pace = new PaceRule(first, planned, plan.Language).Of(all, moment);
        PlanSettings live = plan.WithMinutes(Math.Clamp(moment.Bell, 1, PlanSettings.LongestLesson))
            .WithTrials(Math.Max(plan.Trials, Math.Min(all.Max(g => g.Trial), PlanSettings.MostTrials)));
        var simulator = new LessonSimulator(live, durations, drawers, seed, parallel, pace.Factor);
        LastCalls calls = simulator.Calls(LessonsForCalls);
        var scene = new OutlookScene(live, simulator.Route, new StandingRule(live, simulator.Route), all, moment, pace, planned);
        LessonRules rules = simulator.RulesOf(calls);
        rules = rules with
        {
            Spares = Math.Max(0, rules.Spares - all.Count(g => g.Condition is GroupCondition.StartedAgain)),
            LastHeating = moment.Now > moment.LastHeatingStartsBy ? double.NegativeInfinity : double.PositiveInfinity,
        };
        var counts = new OutlookCounts(lessons, all.Count, simulator.Route.Things.Length, moment, plan.Practical.Classroom.GasOffInMinutes);
        Parallel.For(
            0,
            (lessons + BlockSize - 1) / BlockSize,
            parallel,
            () => new Worker(scene, rules, simulator.NewReheats(), simulator.NewReheats()),
            (block, _, worker) =>
            {
                for (int lesson = block * BlockSize; lesson < Math.Min(lessons, (block + 1) * BlockSize); lesson++)
                {
                    worker.Run(seed, lesson, counts);
                }

                return worker;
            },
            _ => { });
        return Told(scene, counts, calls, simulator.Route.Things);
    }

    private ReheatDraws? ReheatsOf(PlanSettings settings) =>
        settings.Heatings == 1 || drawers.Length == 0 ? null : new ReheatDraws(drawers, settings.Heatings);

    private static LessonOutlook Told(OutlookScene scene, OutlookCounts counts, LastCalls calls, IReadOnlyList<SharedThing> things)
    {
        int[] working = [.. Enumerable.Range(0, scene.Groups.Count).Where(g => !scene.Groups[g].IsAway)];
        GroupOutlook[] groups =
        [
            .. Enumerable.Range(0, scene.Groups.Count).Select(g => new GroupOutlook(
                scene.Groups[g].Group.Number,
                StepAt(scene, g, counts.PlaceOf(g)),
                scene.Groups[g].IsAway ? null : counts.DoneOf(g),
                counts.NextOf(g),
                counts.PackedOf(g))),
        ];
        (int last, double share) = counts.Last(working);
        ThingUse[] uses = [.. things.Select((thing, i) => counts.UseOf(i, thing, working.Length))];
        string bottleneck = OutlookWords.Bottleneck(uses, last < 0 ? null : groups[last], share, scene.Plan.Language);
        int? waitsFor = last < 0 || OutlookWords.QueueMatters(uses) ? null : groups[last].Group;
        return new LessonOutlook(scene.Moment, counts, calls, scene.Pace, groups, bottleneck) { WaitsFor = waitsFor, Language = scene.Plan.Language, HasFlame = scene.Plan.Practical.Kit.Any(k => k.Flame) };
    }

    private static Definition.LessonStep? StepAt(OutlookScene scene, int group, int place) => scene.Groups[group].IsAway ? null
        : place < 0 ? scene.IsTogether ? scene.Groups[group].At.Step : scene.Route.Before.FirstOrDefault()?.Step
        : place < scene.Groups[group].Trial.Places.Count ? scene.Groups[group].Trial.Places[place].Step.Step : null;

    /// <summary>What one thread works with.</summary>
    private sealed class Worker
    {
        private readonly LessonRun run;
        private readonly StartDraw draw;

        public Worker(OutlookScene scene, LessonRules rules, ReheatDraws? reheats, ReheatDraws? startReheats)
        {
            run = new LessonRun(scene.Plan, scene.Route, rules, reheats, pace: scene.Pace.Factor);
            draw = new StartDraw(scene, run, startReheats);
        }

        public void Run(ulong seed, int lesson, OutlookCounts counts)
        {
            draw.Draw(seed, lesson);
            counts.Note(lesson, run.Run(seed, lesson, draw.Start), run, draw.Places);
        }
    }
}
