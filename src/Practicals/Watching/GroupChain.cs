using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>
/// What a group does from the last thing heard of it up to the next that will be heard: a reading, or a flame put out where the
/// class says so. That nothing was heard of the steps between says nothing; that this was not heard yet says that it is not over.
/// </summary>
internal sealed class GroupChain
{
    /// <summary>Gathers it.</summary>
    /// <param name="trial">The trial's route.</param>
    /// <param name="from">The place at which the group is, as far as was heard.</param>
    /// <param name="flamesAreTold">Whether the class says when flames are out.</param>
    public GroupChain(TrialRoute trial, int from, bool flamesAreTold)
    {
        From = from;
        var places = new List<RoutePlace>();
        for (int i = from; i < trial.Places.Count && !trial.Places[i].Step.Together; i++)
        {
            RoutePlace place = trial.Places[i];
            places.Add(place);
            bool flameEnds = flamesAreTold && place.Step.Flame && (i + 1 == trial.Places.Count || !trial.Places[i + 1].Step.Flame);
            if (place.WeighingId is not null || flameEnds)
            {
                IsHeard = true;
                break;
            }
        }

        Places = places;
    }

    /// <summary>Where it begins in the trial's route.</summary>
    public int From { get; }

    /// <summary>Its places.</summary>
    public IReadOnlyList<RoutePlace> Places { get; }

    /// <summary>Whether its end will be heard.</summary>
    public bool IsHeard { get; }

    /// <summary>What its last place needs, where it is a reading that others may wait for as well; -1 for nothing.</summary>
    public int Queue => IsHeard && Places[^1].WeighingId is not null ? Places[^1].Step.Need : -1;
}
