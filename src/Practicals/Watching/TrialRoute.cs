using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>What a group does from the beginning of a trial to the end of its lesson, in order, with as many heatings as the
/// practical allows.</summary>
internal sealed class TrialRoute
{
    /// <summary>Lays it out.</summary>
    /// <param name="route">The plan's route.</param>
    /// <param name="mostHeatings">Heatings that the practical allows.</param>
    /// <param name="first">Whether it is the first trial, before which a group sets up.</param>
    public TrialRoute(LessonRoute route, int mostHeatings, bool first)
    {
        var places = new List<RoutePlace>();
        Add(RoutePart.Before, first ? route.Before : [], 0);
        Add(RoutePart.TrialBefore, route.TrialBefore, 0);
        Add(RoutePart.Heating, route.FirstRound, 0);
        for (int round = 1; route.FirstRound.Length > 0 && round < mostHeatings; round++)
        {
            Add(RoutePart.Heating, route.AgainRound, round);
        }

        HeatingsEnd = places.Count;
        Add(RoutePart.TrialAfter, route.TrialAfter, 0);
        Add(RoutePart.After, route.After, 0);
        Places = places;

        void Add(RoutePart part, RouteStep[] steps, int round) =>
            places.AddRange(steps.Select((step, at) => new RoutePlace(part, at, round, step)));
    }

    /// <summary>The places, in order.</summary>
    public IReadOnlyList<RoutePlace> Places { get; }

    /// <summary>Where the heatings are over: what follows them.</summary>
    public int HeatingsEnd { get; }

    /// <summary>The first place from one on of which something holds; -1 where there is none.</summary>
    public int Find(int from, Func<RoutePlace, bool> wanted)
    {
        for (int i = from; i < Places.Count; i++)
        {
            if (wanted(Places[i]))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>Where the first flame from a place on burns; -1 where none does before the next reading.</summary>
    public int FlameFrom(int from)
    {
        int reading = Find(from, p => p.WeighingId is not null);
        int flame = Find(from, p => p.Step.Flame);
        return flame >= 0 && (reading < 0 || flame < reading) ? flame : -1;
    }

    /// <summary>The place behind the last of the flames that burn one after the other from a place on.</summary>
    public int BehindFlame(int flame)
    {
        int behind = flame;
        while (behind < Places.Count && Places[behind].Step.Flame)
        {
            behind++;
        }

        return behind;
    }
}
