using Calx.Measurement.Numbers;
using Calx.Practicals.Model;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.App.Pages.Students;

/// <summary>
/// A group's way from where it stands to the end, so that its page can go on without a connection. The engine is asked what
/// would come next if the group did what is in front of it; nothing of the practical is known here.
/// </summary>
/// <param name="watch">The engine, ready for the lesson.</param>
/// <param name="moment">The moment.</param>
public sealed class ComingPlaces(LessonWatch watch, LessonMoment moment)
{
    /// <summary>More places than any way has.</summary>
    private const int Most = 60;

    /// <summary>Supposed acts follow each other by so many minutes: they only have to be in order.</summary>
    private const double Apart = 0.001;

    private readonly LessonMoment atWork = new(moment.Now, moment.Bell, moment.WorkBegan ?? moment.Now, moment.LastHeatingStartsBy);

    /// <summary>The places, the present one first; the last is the end.</summary>
    /// <param name="group">The group.</param>
    /// <param name="classBegan">Whether anything was heard of any group.</param>
    public IReadOnlyList<Place> Of(GroupAtWork group, bool classBegan)
    {
        var places = new List<Place>();
        GroupNow now = watch.Now(group, moment, classBegan);
        double minute = moment.Now + Apart;
        while (places.Count < Most && !now.IsDone && now.Step is not null)
        {
            if (now.AwaitsDecision)
            {
                places.Add(new Place(PlaceKind.Decide, now.Step, now.Cautions) { Heating = now.Heating, Following = now.Step });
                group = Supposing(group, decided: new OwnDecision(LastOf(group), heatsAgain: true, minute));
            }
            else
            {
                places.Add(PlaceOf(now, places.Count == 0 ? PutOut(group) : minute));
                if (Next(group, now, minute) is not GroupAtWork next)
                {
                    break;
                }

                group = next;
            }

            minute += Apart;
            now = watch.Now(group, atWork, classBegan: true);
        }

        places.Add(new Place(PlaceKind.End, null, []));
        return places;
    }

    private static Place PlaceOf(GroupNow now, double? putOut) => new(
        now.Step!.Reading is null ? PlaceKind.Do : PlaceKind.Read, now.Step, now.Cautions)
    {
        Reading = now.Next,
        Following = now.Following,
        Heating = now.Heating,
        HasFlame = now.Heat == HeatState.Burning,
        CoolingMinutes = now.CoolEnoughAt - putOut,
    };

    /// <summary>When the flame was put out, as far as is known: at a coming place it is supposed to go out just before.</summary>
    private static double? PutOut(GroupAtWork group) => group.Moments.FlameOut ?? group.Moments.Told?.Minute;

    /// <summary>The group having done what is in front of it; null where nothing tells what follows.</summary>
    private GroupAtWork? Next(GroupAtWork group, GroupNow now, double minute)
    {
        if (now.Step!.Reading is not null)
        {
            return now.Next is NextReading reading ? Reading(group, reading.Weighing, minute) : null;
        }

        // While the class is together nothing follows by itself: the group's own work is what comes.
        string? following = now.Following?.Id
            ?? (moment.WorkBegan is null ? watch.Now(group, atWork, classBegan: true).Step?.Id : null);
        return following is null || following == now.Step.Id ? null : Supposing(group, told: new ToldStep(following, minute));
    }

    private GroupAtWork Reading(GroupAtWork group, Weighing weighing, double minute)
    {
        var taken = new TakenReading(
            weighing.Reading, weighing.Occurrence, new WrittenNumber(0), watch.Plan.Practical.Reading(weighing.Reading).Unit);
        var readings = new GroupReadings(
            group.Readings.Name, group.Readings.Trial, [.. group.Readings.Readings.Where(r => r.Id != taken.Id), taken], remarks: group.Readings.Remarks);
        var readAt = new Dictionary<string, double>(group.Moments.ReadAt) { [taken.Id] = minute };
        return new GroupAtWork(group.Number, group.Trial, group.Balance, readings, new GroupMoments(readAt), group.Condition);
    }

    /// <summary>What the group said of its flame is left out: the step that it is supposed to come to says where its flame is.</summary>
    private static GroupAtWork Supposing(GroupAtWork group, ToldStep? told = null, OwnDecision? decided = null) => new(
        group.Number,
        group.Trial,
        group.Balance,
        group.Readings,
        new GroupMoments(group.Moments.ReadAt, told: told, decided: decided ?? group.Moments.Decided),
        group.Condition);

    /// <summary>The weighing that it took last.</summary>
    private static string LastOf(GroupAtWork group) => group.Readings.Readings[^1].Id;
}
