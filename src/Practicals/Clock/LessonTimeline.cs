using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>One lesson as it might go, group by group, with the chain of steps that made it as long as it is.</summary>
public sealed class LessonTimeline
{
    private LessonTimeline(int groups, double end, IReadOnlyList<TimelineBar> bars, IReadOnlyList<CriticalStep> criticalPath)
    {
        Groups = groups;
        EndMinute = end;
        Bars = bars;
        CriticalPath = criticalPath;
    }

    /// <summary>How many groups work.</summary>
    public int Groups { get; }

    /// <summary>When everything is done.</summary>
    public double EndMinute { get; }

    /// <summary>What each group does when; by group, then by minute.</summary>
    public IReadOnlyList<TimelineBar> Bars { get; }

    /// <summary>From the first bell to the end.</summary>
    public IReadOnlyList<CriticalStep> CriticalPath { get; }

    /// <summary>Runs a lesson again and notes everything.</summary>
    internal static LessonTimeline Of(
        PlanSettings settings, LessonRoute route, LessonRules rules, ReheatDraws? reheats, ulong seed, int lesson)
    {
        var trace = new List<WorkSpan>();
        var run = new LessonRun(settings, route, rules, reheats, trace);
        LessonOutcome outcome = run.Run(seed, lesson);
        var bars = new List<TimelineBar>();
        double opened = 0;
        foreach ((RouteStep step, double minutes) in route.Opening.Zip(run.OpeningMinutes))
        {
            bars.Add(new TimelineBar(0, step.Step.Id, step.Step.Label, BarKind.Class, opened, opened + minutes));
            opened += minutes;
        }

        WorkSpan[] spans = [.. trace.Where(s => s.Tag >= 0)];
        foreach (WorkSpan span in spans)
        {
            LessonStep step = settings.Practical.Steps[span.Tag];
            if (span.Began - span.Asked > 1e-6)
            {
                bars.Add(new TimelineBar(span.Person + 1, step.Id, step.Label, BarKind.Waiting, span.Asked, span.Began));
            }

            bars.Add(new TimelineBar(span.Person + 1, step.Id, step.Label, KindOf(settings.Practical, step), span.Began, span.Ended));
        }

        return new LessonTimeline(
            settings.Groups,
            outcome.End,
            [.. bars.OrderBy(b => b.Group).ThenBy(b => b.FromMinute).ThenBy(b => b.ToMinute)],
            CriticalPathSearch.Of(settings.Practical, bars.Where(b => b.Group == 0), trace, route.Needs));
    }

    private static BarKind KindOf(Practical practical, LessonStep step) =>
        step.Reading is not null ? BarKind.Weighing
        : step.Place.Per == StepPer.Class ? BarKind.Class
        : LessonRoute.HasFlame(practical, step) ? BarKind.Flame
        : LessonRoute.Cools(practical, step) ? BarKind.Cooling
        : BarKind.Work;
}
