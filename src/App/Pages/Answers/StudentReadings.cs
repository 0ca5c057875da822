using Calx.App.Live;
using Calx.App.Pages.CatchUp;
using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.App.Pages.Answers;

/// <summary>
/// The readings that a student's page shows. Of a catch-up pack these are the weighings that everybody takes: which of the reheatings
/// after them count, the student decides on the sheet, and the page gives that away to nobody.
/// </summary>
public static class StudentReadings
{
    /// <summary>Readings by id, as written, in the order in which they were taken.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="roll">Its class.</param>
    /// <param name="member">The student.</param>
    public static IReadOnlyDictionary<string, IReadOnlyList<WrittenNumber>> Of(LessonView view, ClassRoll roll, int member)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(roll);
        if (roll.HasPack(member))
        {
            return OfPack(view, member);
        }

        int group = roll.GroupOf(member);
        return group < 1 || group > view.GroupCount ? new Dictionary<string, IReadOnlyList<WrittenNumber>>() : LessonWorks.ReadingsOf(view, LessonWorks.SourceOf(view, group));
    }

    /// <summary>Mass against time of the student's group; null where there is none. Of a catch-up pack it stands on the student's sheet.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="roll">Its class.</param>
    /// <param name="member">The student.</param>
    public static GroupSeries? SeriesOf(LessonView view, ClassRoll roll, int member)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(roll);
        int group = roll.GroupOf(member);
        return roll.HasPack(member) || group < 1 || group > view.GroupCount ? null : view.ReadingsOf(LessonWorks.SourceOf(view, group)).Series;
    }

    private static Dictionary<string, IReadOnlyList<WrittenNumber>> OfPack(LessonView view, int member)
    {
        string? text = view.Entries.Where(e => e.Entry.Cell is { What: Acts.CatchUp } cell && cell.Member == member)
            .Select(e => e.Entry.Content).OfType<EntryContent.Happening>().FirstOrDefault()?.Text;
        IEnumerable<PackReading> readings = text is null ? [] : KeptPackText.Readings(text);
        return readings.Where(r => r.Weighing.Occurrence == 1).DistinctBy(r => r.Weighing.Reading)
            .ToDictionary(r => r.Weighing.Reading, IReadOnlyList<WrittenNumber> (r) => [r.Displayed], StringComparer.Ordinal);
    }
}
