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

    /// <summary>Simulates them.</summary>
    public PlannedMinutes(PlanSettings plan, LessonRoute route, ReheatDraws? reheats, ulong seed)
    {
        var run = new LessonRun(plan, route, LessonRules.Unbroken, reheats);
        var passed = new Dictionary<(RoutePart, int, int), int>();
        run.Ended = (_, group, minute) =>
        {
            if (group.Trial > 0)
            {
                return;
            }

            // Steps that nobody waits for are told of ahead of their time: ranks are those of the telling, which is near enough.
            (RoutePart, int, int) place = (group.Part, group.At - 1, group.Part == RoutePart.Heating ? group.Round : 0);
            (double Sum, int Count)[] ranks = ends.TryGetValue(place, out (double, int)[]? known) ? known : ends[place] = new (double, int)[plan.Groups];
            int rank = passed[place] = passed.GetValueOrDefault(place) + 1;
            ranks[rank - 1] = (ranks[rank - 1].Sum + minute - run.OpeningEnd, ranks[rank - 1].Count + 1);
        };
        for (int lesson = 0; lesson < Lessons; lesson++)
        {
            passed.Clear();
            run.Run(seed, FirstLesson + lesson);
        }
    }

    /// <summary>The minute at which a place is left behind by the first group (rank 0), the second ...; null where so many never
    /// came there.</summary>
    public double? EndOf(RoutePlace place, int rank) =>
        ends.TryGetValue((place.Part, place.At, place.Round), out (double Sum, int Count)[]? ranks) && rank < ranks.Length && ranks[rank].Count > 0
            ? ranks[rank].Sum / ranks[rank].Count : null;
}
