using Calx.App.Live;
using Calx.Practicals.Definition;
using Calx.Records.Journal;

namespace Calx.App.Pages.Series;

/// <summary>One time of a series with what was typed.</summary>
/// <param name="Id">Its place in the journal.</param>
/// <param name="Minutes">The time in min.</param>
/// <param name="Time">The time as the sheet writes it.</param>
/// <param name="Cell">All that was typed there, or null.</param>
public sealed record TypedPoint(string Id, double Minutes, string Time, CellState? Cell)
{
    /// <summary>The reading that counts, or null.</summary>
    public EntryContent.Reading? Reading => Cell?.Current.Entry.Content as EntryContent.Reading;

    /// <summary>As typed, or null.</summary>
    public string? Written => Reading?.Written.ToString();

    /// <summary>A group's points between the first and the last, in order of time; none where the practical takes no series.</summary>
    public static IReadOnlyList<TypedPoint> Of(LessonView view, int group)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.Practical.Series is not SeriesDefinition series ? []
            : [.. series.TimesInMinutes.Skip(1).SkipLast(1).Select(t => new TypedPoint(series.PointId(t), t, series.TimeText(t), view.Cell(group, series.PointId(t))))];
    }

    /// <summary>How many of its points a group has, in words; null where the practical takes no series.</summary>
    public static string? CountInWords(LessonView view, int group)
    {
        IReadOnlyList<TypedPoint> points = Of(view, group);
        return points.Count == 0 ? null : FormattableString.Invariant($"{points.Count(p => p.Reading is not null)} of {points.Count} points");
    }
}
