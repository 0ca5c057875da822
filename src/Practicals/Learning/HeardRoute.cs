using Calx.Practicals.Clock;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Learning;

/// <summary>The steps of a trial in their order, with as many heatings as the practical allows, and the place to which a mark belongs.</summary>
internal sealed class HeardRoute
{
    private readonly (RouteStep Step, int Round)[] places;

    public HeardRoute(PlanSettings plan, LessonRoute route, bool isFirst)
    {
        RouteStep[] heatings = route.FirstRound;
        places =
        [
            .. (isFirst ? route.Before : []).Concat(route.TrialBefore).Concat(heatings).Select(s => (s, 0)),
            .. Enumerable.Range(1, heatings.Length == 0 ? 0 : PlanSettings.MostHeatings(plan.Practical) - 1).SelectMany(round => route.AgainRound.Select(s => (s, round))),
            .. route.TrialAfter.Concat(route.After).Select(s => (s, 0)),
        ];
    }

    public RouteStep this[int place] => places[place].Step;

    public int Count => places.Length;

    /// <summary>The boundary between places to which a mark belongs, from one on: 3 lies between the third place and the fourth. Null where
    /// it belongs to none: what was heard then says nothing of steps.</summary>
    public int? BoundaryOf(HeardMark mark, int from) => mark switch
    {
        HeardMark.CameTo came => Find(from, i => this[i].Step.Id == came.Step),
        HeardMark.Read read => Find(Math.Max(from - 1, 0), i => Weighing(i) == read.Weighing) + 1,
        HeardMark.FlameLit => Find(from, i => this[i].Flame) is int lit && !ReadsBetween(from, lit) ? lit : null,
        HeardMark.FlameOut => BehindFlame(from),
        _ => null,
    };

    /// <summary>Behind the flames that burn one after the other about a place.</summary>
    private int? BehindFlame(int from)
    {
        int? first = from > 0 && this[from - 1].Flame && (from == Count || !this[from].Flame) ? from - 1 : Find(from, i => this[i].Flame);
        if (first is not int behind || ReadsBetween(from, behind))
        {
            return null;
        }

        while (behind < Count && this[behind].Flame)
        {
            behind++;
        }

        return behind;
    }

    private bool ReadsBetween(int from, int to) => Enumerable.Range(from, Math.Max(0, to - from)).Any(i => this[i].Step.Reading is not null);

    private string? Weighing(int place) => this[place].Step.Reading is string reading ? TakenReading.IdOf(reading, places[place].Round + 1) : null;

    private int? Find(int from, Func<int, bool> wanted)
    {
        for (int i = from; i < Count; i++)
        {
            if (wanted(i))
            {
                return i;
            }
        }

        return null;
    }
}
