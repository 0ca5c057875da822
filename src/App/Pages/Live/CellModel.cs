using Calx.App.Live;
using Calx.Practicals.Definition;
using Calx.Records.Journal;

namespace Calx.App.Pages.Live;

/// <summary>One cell of the table with all that was ever typed there.</summary>
/// <param name="View">The lesson.</param>
/// <param name="Cell">Which cell.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Occurrence">1 for the first time it is taken.</param>
/// <param name="State">What was typed, or null.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
public sealed record CellModel(LessonView View, JournalCell Cell, ReadingDefinition Reading, int Occurrence, CellState? State, string? Fault)
{
    /// <summary>The cell, or null where the sheet has none.</summary>
    public static CellModel? Of(LessonView view, int group, int trial, string what, string? fault)
    {
        // A point of mass against time is read as its first point is.
        (ReadingDefinition Reading, int Occurrence, string Id) weighing = view.Practical.Series is SeriesDefinition series && series.IsPoint(what)
            ? (view.Practical.Reading(series.From), 1, what) : view.Weighings.FirstOrDefault(w => w.Id == what);
        var cell = new JournalCell(group, trial, what);
        return weighing.Reading is null || group < 1 || group > view.GroupCount || trial < 1
            ? null
            : new CellModel(view, cell, weighing.Reading, weighing.Occurrence, view.Table.FirstOrDefault(c => c.Cell == cell), fault);
    }

    /// <summary>What is asked about the number that was typed last and is not kept yet, or null.</summary>
    public string? Ask { get; init; }

    /// <summary>That number, or null.</summary>
    public string? Typed { get; init; }

    /// <summary>The reason that was given with it, or null.</summary>
    public string? Why { get; init; }

    /// <summary>Its name for people.</summary>
    public string Label => CellNames.Of(View.Practical, Cell.What);
}
