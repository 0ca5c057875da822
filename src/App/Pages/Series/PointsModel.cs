using Calx.App.Live;
using Calx.Practicals.Definition;
using Calx.Records.Journal;

namespace Calx.App.Pages.Series;

/// <summary>A group's mass against time, to type in.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Group">The group.</param>
/// <param name="Address">Where the page is, and where its form goes.</param>
/// <param name="Back">The page from which one comes.</param>
/// <param name="IsTeacher">Whether the teacher types, who may correct.</param>
/// <param name="Fault">What was not taken, or null.</param>
public sealed record PointsModel(LessonView View, int Group, string Address, string Back, bool IsTeacher, string? Fault)
{
    /// <summary>The series.</summary>
    public SeriesDefinition Series => View.Practical.Series!;

    /// <summary>The group's present trial.</summary>
    public int Trial => View.State.Group(Group).Trial;

    /// <summary>The points between the first and the last, with what was typed; in order of time.</summary>
    public IReadOnlyList<TypedPoint> Points => [.. Series.TimesInMinutes.Skip(1).SkipLast(1).Select(Point)];

    /// <summary>What a reading of the sheet that is a point as well has, or null.</summary>
    public string? End(string reading) => (View.Reading(Group, reading)?.Entry.Content as EntryContent.Reading)?.Written.ToString();

    private TypedPoint Point(double minutes)
    {
        string id = Series.PointId(minutes);
        KeptEntry? kept = View.Reading(Group, id);
        return new TypedPoint(id, minutes, Series.TimeText(minutes), (kept?.Entry.Content as EntryContent.Reading)?.Written.ToString(), kept);
    }
}

/// <summary>One time of a series with what was typed.</summary>
/// <param name="Id">Its place in the journal.</param>
/// <param name="Minutes">The time in min.</param>
/// <param name="Time">The time as the sheet writes it.</param>
/// <param name="Written">As typed, or null.</param>
/// <param name="Kept">The entry that counts, or null.</param>
public sealed record TypedPoint(string Id, double Minutes, string Time, string? Written, KeptEntry? Kept);
