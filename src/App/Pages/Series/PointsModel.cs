using System.Globalization;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Practicals.Definition;
using Calx.Records.Journal;

namespace Calx.App.Pages.Series;

/// <summary>A group's mass against time, to type in on its own device or at a balance station.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Group">The group.</param>
/// <param name="Seat">The device's seat.</param>
/// <param name="Fault">What was not taken, or null.</param>
public sealed record PointsModel(LessonView View, int Group, Seat Seat, string? Fault)
{
    /// <summary>The series.</summary>
    public SeriesDefinition Series => View.Practical.Series!;

    /// <summary>Whether it is a balance station's page.</summary>
    public bool IsStation => Seat.Role == SeatRole.Station;

    /// <summary>Where the page is, and where its form goes.</summary>
    public string Address => IsStation ? string.Create(CultureInfo.InvariantCulture, $"/table/points?group={Group}") : "/table/points";

    /// <summary>The page from which one comes.</summary>
    public string Back => IsStation ? string.Create(CultureInfo.InvariantCulture, $"/table?group={Group}") : "/table";

    /// <summary>What its happenings add up to.</summary>
    public GroupState State => View.State.Group(Group);

    /// <summary>The group's present trial.</summary>
    public int Trial => State.Trial;

    /// <summary>Whether it goes on with simulated readings.</summary>
    public bool IsSimulated => State.Condition == Acts.Conditions.Simulated;

    /// <summary>Whether it takes points now.</summary>
    public bool IsOpen => !View.State.IsOver && State.JoinedGroup is null && State.Condition is not (Acts.Conditions.Finished or Acts.Conditions.Broken);

    /// <summary>What the simulated balance shows, by the point's id; empty where the group weighs itself.</summary>
    public IReadOnlyDictionary<string, string> Displays { get; init; } = new Dictionary<string, string>();

    /// <summary>The points between the first and the last, with what was typed; in order of time.</summary>
    public IReadOnlyList<TypedPoint> Points => TypedPoint.Of(View, Group);

    /// <summary>Letter of the balance on which the group reads, or null.</summary>
    public string? Balance => Ends(Series.From)?.Balance;

    /// <summary>Decimals of what its balance shows, as far as its readings tell.</summary>
    public int? Decimals => Ends(Series.From)?.Written.Decimals;

    /// <summary>What the group has noted that stops everything.</summary>
    public IReadOnlyList<string> Stops => [.. View.Practical.Observations.Where(o => o.Stop && View.SeenBy(Group).Contains(o.Id)).Select(o => o.Label)];

    /// <summary>Ids of what this device sent that has been kept, the last fifty.</summary>
    public string Kept => string.Join(' ', View.Entries.Where(e => e.Entry.Device == Seat.Device).TakeLast(50).Select(e => e.Entry.Id));

    /// <summary>What a reading of the sheet that is a point as well has, or null.</summary>
    public string? End(string reading) => Ends(reading)?.Written.ToString();

    private EntryContent.Reading? Ends(string reading) => View.Reading(Group, reading)?.Entry.Content as EntryContent.Reading;
}
