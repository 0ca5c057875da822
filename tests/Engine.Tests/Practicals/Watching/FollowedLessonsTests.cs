using Calx.Chemistry.Elements;
using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>
/// Whole lessons drawn by the plan's clock are followed: at some minute the forecast is asked from what was heard until then, and
/// what happened is compared with it. A forecast that keeps its word has the true end below its ninth in nine of ten cases, and
/// below its median in half of them. No formula of the forecast is used: the lesson itself is the judge.
/// </summary>
public sealed class FollowedLessonsTests(ITestOutputHelper output)
{
    private static readonly PlanSettings Unbroken12 = new PlanSettings(Unbroken, 12, [Centigram, Centigram], 110).WithPrepared(true);

    [Theory]
    [InlineData(30, true)]
    [InlineData(50, true)]
    [InlineData(70, true)]
    [InlineData(50, false)]
    public void What_happens_lies_where_the_forecast_said(double now, bool flamesAreTold)
    {
        var watch = new LessonWatch(Unbroken12, AtomicWeights.Iupac2024, 11);
        int lessons = LongProofs.Cases(25, 200);
        var done = new Tally();
        var next = new Tally();
        for (int lesson = 0; lesson < lessons; lesson++)
        {
            Followed true12 = Follow(lesson);
            LessonOutlook outlook = watch.Outlook(
                [.. Enumerable.Range(0, 12).Select(g => true12.Known(g, now, flamesAreTold))], new LessonMoment(now, 110, true12.Began), 200);
            for (int g = 0; g < 12; g++)
            {
                if (true12.Done[g] > now)
                {
                    done.Note(true12.Done[g], outlook.Groups[g].Done!.Value);
                }

                double? read = true12.NextAfter(g, now);
                if (read is double minute && outlook.Groups[g].NextReading is MinuteRange said)
                {
                    next.Note(minute, said);
                }
            }
        }

        output.WriteLine(FormattableString.Invariant($"minute {now}: done {done}, next reading {next}"));
        // Groups of a lesson share queues and pace: the bounds allow for three standard errors of as many lessons.
        double slack = LongProofs.ThreeErrors(0.5, 3 * lessons);
        Assert.InRange(done.Ninth, 0.9 - slack, 1);
        Assert.InRange(done.Median, 0.5 - slack, 0.5 + slack);
        Assert.InRange(next.Ninth, 0.9 - slack, 1);
        Assert.InRange(next.Median, 0.5 - slack, 0.5 + slack);
    }

    private static Followed Follow(int number)
    {
        var tables = new PlanTables(AtomicWeights.Iupac2024);
        var route = new LessonRoute(Unbroken12, tables.Durations);
        var run = new LessonRun(Unbroken12, route, LessonRules.Unbroken, Drawn.Value);
        var followed = new Followed();
        run.Ended = (person, group, minute) => followed.Hear(person, group, minute);
        run.Run(977, number);
        followed.Began = run.OpeningEnd;
        followed.Done = [.. run.Minutes.Select(m => m.Ready)];
        return followed;
    }

    private static readonly ThreadLocal<ReheatDraws> Drawn = new(
        () => new ReheatDraws(new PlanTables(AtomicWeights.Iupac2024).DrawersOf(Unbroken12), Unbroken12.Heatings));

    /// <summary>How often the truth lay below what was said.</summary>
    private sealed class Tally
    {
        private int below;
        private int belowNinth;
        private int all;

        public double Median => (double)below / all;

        public double Ninth => (double)belowNinth / all;

        public override string ToString() => FormattableString.Invariant($"{Median:F3} below the median, {Ninth:F3} below the ninth, of {all}");

        public void Note(double minute, MinuteRange said)
        {
            below += minute <= said.Median ? 1 : 0;
            belowNinth += minute <= said.Ninth ? 1 : 0;
            all++;
        }
    }

    /// <summary>A lesson as it went.</summary>
    private sealed class Followed
    {
        private readonly List<(string Id, double Minute)>[] readings = [.. Enumerable.Range(0, 12).Select(_ => new List<(string, double)>())];
        private readonly List<double>[] flames = [.. Enumerable.Range(0, 12).Select(_ => new List<double>())];

        public double Began { get; set; }

        public double[] Done { get; set; } = [];

        public void Hear(int person, RouteState group, double minute)
        {
            LessonStep step = Unbroken.Steps[StepIndex(group)];
            if (step.Reading is string reading)
            {
                readings[person].Add((TakenReading.IdOf(reading, group.Part == RoutePart.Heating ? group.Round + 1 : 1), minute));
            }
            else if (step.Id is "finish" or "reheat")
            {
                flames[person].Add(minute);
            }
        }

        public double? NextAfter(int g, double now) => readings[g].Where(r => r.Minute > now).Select(r => (double?)r.Minute).FirstOrDefault();

        /// <summary>What had been heard of a group by then. Its masses say what it did: where another heating followed, the last
        /// two differ.</summary>
        public GroupAtWork Known(int g, double now, bool flamesAreTold)
        {
            int heatings = readings[g].Count(r => r.Id.StartsWith("after", StringComparison.Ordinal));
            string text = string.Join(' ', readings[g].Where(r => r.Minute <= now).Select(r => FormattableString.Invariant($"{r.Id}={Mass(r.Id, heatings)}@{r.Minute}")));
            double? put = flamesAreTold ? flames[g].Where(m => m <= now).Select(m => (double?)m).LastOrDefault() : null;
            return Group(text, flameOut: put, number: g + 1);
        }

        private static string Mass(string id, int heatings) => (id, heatings) switch
        {
            ("empty", _) => "28.60",
            ("before", _) => "28.84",
            ("after", _) => "28.92",
            ("after2", 2) => "28.93",
            ("after2", _) => "28.96",
            _ => "28.97",
        };

        private static int StepIndex(RouteState group)
        {
            RouteStep[] steps = group.Part switch
            {
                RoutePart.Before => Route.Before,
                RoutePart.TrialBefore => Route.TrialBefore,
                RoutePart.Heating => group.Round == 0 ? Route.FirstRound : Route.AgainRound,
                RoutePart.TrialAfter => Route.TrialAfter,
                _ => Route.After,
            };
            return steps[group.At - 1].Index;
        }

        private static readonly LessonRoute Route = new(Unbroken12, new DurationTable());
    }
}
