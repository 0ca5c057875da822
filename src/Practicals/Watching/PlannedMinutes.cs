using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>When the first, the second ... of a plan's groups comes through each place of the route, on average over simulated
/// lessons, in min since the groups' own work could begin. By rank, since those that are heard of first are those at the front of a
/// queue, and not a fast class.</summary>
internal sealed class PlannedMinutes
{
    private const int Lessons = 100;

    /// <summary>Lessons of their own: no forecast is counted on them.</summary>
    private const int FirstLesson = 1 << 23;

    private readonly Dictionary<(RoutePart Part, int At, int Round), (double Sum, int Count)[]> ends = [];
    private readonly Dictionary<(RoutePart Part, int At, int Round), (double Sum, int Count)> waits = [];

    /// <summary>Simulates them.</summary>
    public PlannedMinutes(PlanSettings plan, LessonRoute route, ReheatDraws? reheats, ulong seed)
    {
        var run = new LessonRun(plan, route, LessonRules.Unbroken, reheats);
        var passed = new Dictionary<(RoutePart, int, int), List<double>>();
        double[] left = new double[plan.Groups];
        run.Ended = (person, group, minute) =>
        {
            if (group.Trial == 0)
            {
                NoteWait(run, person, group, minute, left);
                (RoutePart, int, int) place = (group.Part, group.At - 1, group.Part == RoutePart.Heating ? group.Round : 0);
                List<double> minutes = passed.TryGetValue(place, out List<double>? known) ? known : passed[place] = [];
                minutes.Add(minute - run.OpeningEnd);
            }
        };
        for (int lesson = 0; lesson < Lessons; lesson++)
        {
            Array.Fill(left, double.NaN);
            run.Run(seed, FirstLesson + lesson);
            foreach (((RoutePart, int, int) place, List<double> minutes) in passed)
            {
                Add(place, minutes, plan.Groups);
                minutes.Clear();
            }
        }
    }

    /// <summary>What a step took beyond its own mean time, from the end of the one before, is waiting; drawn times level out.</summary>
    private void NoteWait(LessonRun run, int person, RouteState group, double minute, double[] left)
    {
        RouteStep step = run.StepsOf(group)[group.At - 1];
        if (step.Need >= 0 && !double.IsNaN(left[person]))
        {
            (RoutePart, int, int) place = (group.Part, group.At - 1, group.Part == RoutePart.Heating ? group.Round : 0);
            (double sum, int count) = waits.GetValueOrDefault(place);
            waits[place] = (sum + minute - left[person] - (step.Minutes.Mean * step.Factor), count + 1);
        }

        left[person] = minute;
    }

    /// <summary>Minutes that a group waits at a place, on average; 0 where nothing is shared.</summary>
    public double WaitAt(RoutePlace place) => waits.TryGetValue((place.Part, place.At, place.Round), out (double Sum, int Count) wait)
        ? Math.Max(0, wait.Sum / wait.Count) : 0;

    private void Add((RoutePart Part, int At, int Round) place, List<double> minutes, int groups)
    {
        // A step tells of its end when it begins, so they do not come in the order of their minutes.
        minutes.Sort();
        (double Sum, int Count)[] ranks = ends.TryGetValue(place, out (double, int)[]? known) ? known : ends[place] = new (double, int)[groups];
        for (int rank = 0; rank < minutes.Count; rank++)
        {
            ranks[rank] = (ranks[rank].Sum + minutes[rank], ranks[rank].Count + 1);
        }
    }

    /// <summary>The minute at which a place is left behind by the first group (rank 0), the second ...; null where so many never
    /// came there.</summary>
    public double? EndOf(RoutePlace place, int rank) =>
        ends.TryGetValue((place.Part, place.At, place.Round), out (double Sum, int Count)[]? ranks) && rank < ranks.Length && ranks[rank].Count > 0
            ? ranks[rank].Sum / ranks[rank].Count : null;
}
