using Calx.Chemistry.Elements;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.Clock;

/// <summary>Simulates lessons of one plan: a few to set the last calls, then many to count. The same plan and seed give the same
/// forecast on any number of threads.</summary>
internal sealed class LessonSimulator
{
    /// <summary>Lessons from here on are only for the last calls: what is counted is counted on others.</summary>
    private const int FirstPilot = 1 << 24;

    private const int MostPilotLessons = 150;
    private const int BlockSize = 25;

    private readonly PlanSettings settings;
    private readonly GroupDrawer[] drawers;
    private readonly ulong seed;
    private readonly ParallelOptions parallel;
    private readonly double pace;

    /// <summary>Prepares a plan.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="durations">Laws of durations, shared by all plans that are compared.</param>
    /// <param name="drawers">What draws the groups' readings, one for each balance; empty where every group heats as often as planned.</param>
    /// <param name="seed">Which of the possible lessons.</param>
    /// <param name="parallel">Threads and cancellation.</param>
    /// <param name="pace">How many times as long as planned the class takes for all but cooling.</param>
    public LessonSimulator(
        PlanSettings settings, DurationTable durations, GroupDrawer[] drawers, ulong seed, ParallelOptions parallel, double pace = 1)
    {
        this.pace = pace;
        this.settings = settings;
        this.drawers = drawers;
        this.seed = seed;
        this.parallel = parallel;
        Route = new LessonRoute(settings, durations);
    }

    /// <summary>The plan's route.</summary>
    public LessonRoute Route { get; }

    /// <summary>The forecast from so many lessons.</summary>
    public LessonForecast Forecast(int lessons)
    {
        LastCalls calls = Calls(lessons);
        LessonRules rules = RulesOf(calls);
        var counted = new Counted(lessons, Route.Things.Length);
        Count(rules, counted);
        int[] byEnd = [.. Enumerable.Range(0, lessons).OrderBy(i => counted.Outcomes[i].End).ThenBy(i => i)];
        return new LessonForecast(
            settings,
            counted.Outcomes,
            [.. Route.Things.Select((thing, i) => counted.UseOf(i, thing, settings.Groups))],
            calls,
            LessonTimeline.Of(settings, Route, rules, NewReheats(), seed, byEnd[lessons / 2]),
            LessonTimeline.Of(settings, Route, rules, NewReheats(), seed, byEnd[lessons * 19 / 20]));
    }

    /// <summary>Probability that the plan fits, and nothing else.</summary>
    public Share Fits(int lessons)
    {
        var counted = new Counted(lessons, Route.Things.Length);
        Count(RulesOf(Calls(lessons)), counted);
        double gasOff = settings.Minutes - settings.Practical.Classroom.GasOffInMinutes;
        return Share.Of(counted.Outcomes.Count(o => o.End <= settings.Minutes && o.FlameOut <= gasOff), lessons);
    }

    /// <summary>How often groups heat, for one thread; null for as often as planned.</summary>
    public ReheatDraws? NewReheats() => settings.Heatings == 1 || drawers.Length == 0 ? null : new ReheatDraws(drawers, settings.Heatings);

    private void Count(LessonRules rules, Counted counted)
    {
        int lessons = counted.Outcomes.Length;
        int blocks = (lessons + BlockSize - 1) / BlockSize;
        Parallel.For(
            0,
            blocks,
            parallel,
            () => new LessonRun(settings, Route, rules, NewReheats(), pace: pace),
            (block, _, run) =>
            {
                for (int lesson = block * BlockSize; lesson < Math.Min(lessons, (block + 1) * BlockSize); lesson++)
                {
                    counted.Note(lesson, run.Run(seed, lesson), run.Shared);
                }

                return run;
            },
            _ => { });
    }

    /// <summary>What lessons go by with these calls.</summary>
    public LessonRules RulesOf(LastCalls calls)
    {
        KitItem[] vessels = [.. settings.Practical.Kit.Where(k => k.Loss.StartsAgain)];
        double whole = 1;
        foreach (KitItem vessel in vessels)
        {
            whole *= Math.Pow(1 - vessel.Loss.Breaks, vessel.Need.Per == KitPer.Group ? vessel.Need.Number : 1);
        }

        int spares = vessels.Select(v => KitCount.Of(v, settings).Spare).DefaultIfEmpty(0).Min();
        return new LessonRules(1 - whole, spares, calls.NewTrial ?? 0);
    }

    /// <summary>From lessons in which nothing breaks and nothing is called: how long a group that begins a heating takes to be
    /// done, nine times in ten.</summary>
    public LastCalls Calls(int lessons)
    {
        var run = new LessonRun(settings, Route, LessonRules.Unbroken, NewReheats(), pace: pace);
        var heat = new Samples();
        var reheat = new Samples();
        var trial = new List<double>();
        for (int lesson = 0; lesson < Math.Min(MostPilotLessons, lessons / 4); lesson++)
        {
            LessonOutcome outcome = run.Run(seed, FirstPilot + lesson);
            double talk = outcome.End - run.Minutes.Max(m => m.Ready);
            foreach (GroupMinutes group in run.Minutes)
            {
                double rest = group.Ready + talk;
                trial.Add(rest - group.TrialBegan);
                heat.Add(group.HeatBegan, group.HeatEnded, rest);
                reheat.Add(group.ReheatBegan, group.ReheatEnded, rest);
            }
        }

        double gasOff = settings.Practical.Classroom.GasOffInMinutes;
        double fetching = settings.Practical.Classroom.NewStart.Mean;
        return new LastCalls(
            Route.FirstFlames.First < 0 ? null : heat.LastCall(settings.Minutes, gasOff),
            settings.Heatings == 1 || Route.AgainFlames.First < 0 ? null : reheat.LastCall(settings.Minutes, gasOff),
            Route.TrialBefore.Length + Route.FirstRound.Length == 0 ? null : Math.Max(0, Math.Floor(settings.Minutes - Ninth(trial) - fetching)));
    }

    private static double Ninth(List<double> values) => Summary.QuantileOfSorted([.. values.Order()], 0.9);

    /// <summary>How long heatings last, and how long it is from their beginning to the end of everything.</summary>
    private sealed class Samples
    {
        private readonly List<double> flames = [];
        private readonly List<double> rests = [];

        public void Add(double began, double ended, double end)
        {
            if (began > 0)
            {
                flames.Add(ended - began);
                rests.Add(end - began);
            }
        }

        public double? LastCall(double minutes, double gasOff) => flames.Count == 0
            ? null
            : Math.Max(0, Math.Floor(Math.Min(minutes - Ninth(rests), minutes - gasOff - Ninth(flames))));
    }

    /// <summary>What lessons came to, each at its own place, so that threads do not matter.</summary>
    private sealed class Counted(int lessons, int things)
    {
        private readonly double[,] waited = new double[things, lessons];
        private readonly double[,] longest = new double[things, lessons];
        private readonly double[,] used = new double[things, lessons];

        public LessonOutcome[] Outcomes { get; } = new LessonOutcome[lessons];

        public void Note(int lesson, LessonOutcome outcome, IReadOnlyList<SharedUse> shared)
        {
            Outcomes[lesson] = outcome;
            for (int thing = 0; thing < shared.Count; thing++)
            {
                waited[thing, lesson] = shared[thing].WaitedMinutes;
                longest[thing, lesson] = shared[thing].LongestWait;
                used[thing, lesson] = shared[thing].BusyMinutes / (shared[thing].Units * outcome.End);
            }
        }

        public ThingUse UseOf(int thing, SharedThing what, int groups) =>
            new(what, Mean(waited, thing) / groups, Mean(longest, thing), Mean(used, thing));

        private static double Mean(double[,] values, int thing)
        {
            double sum = 0;
            for (int i = 0; i < values.GetLength(1); i++)
            {
                sum += values[thing, i];
            }

            return sum / values.GetLength(1);
        }
    }
}
