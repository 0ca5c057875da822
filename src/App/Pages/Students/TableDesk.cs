using Calx.App.Live;
using Calx.App.Serving;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;
using Calx.Records.Journal;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Students;

/// <summary>Puts together what a device at the table shows. Only the group of its seat is looked at; a station sees every group's
/// next reading and nothing of what groups decide.</summary>
public sealed class TableDesk(LiveDesk desk, KnownBalances balances)
{
    /// <summary>The page's model.</summary>
    public async Task<TableModel> Of(LessonView view, Seat seat, CancellationToken cancellation)
    {
        LetteredBalances known = await balances.Now(cancellation);
        GroupAtWork[] all = [.. view.Groups.Select(g => AtWork.Of(view, known, g))];
        bool began = LessonWatch.HasBegun(all);
        LessonMoment moment = Moment(view);
        var tables = new List<GroupTable>();
        foreach (GroupAtWork group in seat.Role == SeatRole.Station ? all : [all[seat.Group - 1]])
        {
            (string? sentence, bool isWarm) = seat.Role == SeatRole.Station ? default : await Sentence(view, group, cancellation);
            tables.Add(TableOf(view, group, moment, began) with { Sentence = sentence, Warm = isWarm ? WarmOf(view, group) : null });
        }

        return new TableModel(view, seat, tables, BalanceChoices.Of(known, view.Room.Plan));
    }

    private LessonMoment Moment(LessonView view) => new(
        view.MinuteAt(desk.Time) ?? 0,
        view.BellMinute,
        view.State.WorkBeganAt is DateTimeOffset began ? view.MinuteAt(began) : null);

    /// <summary>The engine's sentence for the students. It is worked out only once there is something to decide on, and never in an
    /// assessed lesson, where what keeps people safe is said by the page itself, nor in a cover lesson, where nothing is heated. With it comes whether it asks for a weighing again when
    /// cool, which a simulated balance cannot do.</summary>
    private async Task<(string? Said, bool IsWarm)> Sentence(LessonView view, GroupAtWork group, CancellationToken cancellation)
    {
        LessonSettings settings = view.Room.Lesson.Settings;
        if (settings.Assessed || view.State.IsCover || group.Readings.Readings.Count == 0)
        {
            return default;
        }

        bool hasDecided = !settings.DecideFirst || view.State.Group(group.Number).Decided is not null;
        LiveFacts facts = await desk.Facts(view, cancellation);
        Advice advice = facts.Groups[group.Number - 1].Advice;
        bool isWarm = advice is Advice.CoolAndReweigh && hasDecided;
        return advice is Advice.StopTellYourTeacher || (isWarm && group.Condition is GroupCondition.Simulated)
            ? default : (advice.ForStudent(settings.Assessed, hasDecided), isWarm);
    }

    /// <summary>The group's last weighing of what cools.</summary>
    private static WeighedWarm? WarmOf(LessonView view, GroupAtWork group)
    {
        if (view.Practical.Cooling?.Reading is not string cools || group.Readings.LastOf(cools) is not TakenReading last
            || view.Reading(group.Number, last.Id) is not { Entry: { Content: EntryContent.Reading reading } entry })
        {
            return null;
        }

        string label = ReadingNames.OfId(view.Practical, last.Id);
        return new WeighedWarm(entry.Id.ToString(), last.Id, label, reading.Unit, reading.Balance ?? "", reading.Vessel ?? "");
    }

    private static GroupTable TableOf(LessonView view, GroupAtWork group, LessonMoment moment, bool began)
    {
        LessonWatch watch = view.Room.Watch;
        bool isSimulated = group.Condition is GroupCondition.Simulated;
        IReadOnlyList<Place> places = new ComingPlaces(watch, moment).Of(AtWork.AsIfWeighing(group), began || isSimulated);
        EntryContent.Reading[] readings =
            [.. view.Weighings.Select(w => view.Reading(group.Number, w.Id)?.Entry.Content).OfType<EntryContent.Reading>()];
        return new GroupTable(group.Number, view.State.Group(group.Number), isSimulated ? OnPaper(places) : places)
        {
            SimulatedDisplays = isSimulated ? view.Room.Simulated.DisplaysOf(group) : new Dictionary<string, string>(),
            WaitsForStart = !began && moment.WorkBegan is null && places[0] is { Kind: PlaceKind.Do, Following: null },
            CoolAt = CoolAt(view, group, watch.Now(group, moment, began).CoolEnoughAt),
            Stops = [.. view.Practical.Observations.Where(o => o.Stop && view.SeenBy(group.Number).Contains(o.Id)).Select(o => o.Label)],
            Vessel = readings.Select(r => r.Vessel).LastOrDefault(v => v is not null) ?? "",
            Balance = readings.Select(r => r.Balance).LastOrDefault(b => b is not null) ?? "",
            Mark = view.NumberFor(group.Number),
        };
    }

    /// <summary>A group with simulated readings has nothing to heat or to clear up: it reads and decides.</summary>
    private static Place[] OnPaper(IReadOnlyList<Place> places) =>
        [.. places.Where(p => p.Kind != PlaceKind.Do).Select(p => p with { Cautions = [], HasFlame = false, CoolingMinutes = null })];

    /// <summary>The time counts from flame out, so that a group that heats before the lesson's clock has started has a countdown too.</summary>
    private static DateTimeOffset? CoolAt(LessonView view, GroupAtWork group, double? minute) =>
        minute is not double cool ? null
        : group.Moments.FlameOut is double put && view.State.Group(group.Number).FlameOutAt is DateTimeOffset at ? at.AddMinutes(cool - put)
        : view.State.BeganAt?.AddMinutes(cool);
}
