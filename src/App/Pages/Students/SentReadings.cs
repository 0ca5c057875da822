using Calx.App.Live;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.App.Pages.Students;

/// <summary>The readings of one start of a group, for its own page.</summary>
public static class SentReadings
{
    /// <summary>Those that were sent, in the order of the sheet.</summary>
    public static IReadOnlyList<SentReading> Of(LessonView view, int group, int trial)
    {
        var cells = view.Table.Where(c => c.Cell.Group == group && c.Cell.Trial == trial && c.Cell.Member == 0)
            .ToDictionary(c => c.Cell.What, StringComparer.Ordinal);
        return
        [
            .. view.Weighings.Where(w => cells.TryGetValue(w.Id, out CellState? cell) && cell.Current.Entry.Content is EntryContent.Reading)
                .Select(w => Of(LabelOf(view.Practical, w.Reading, w.Occurrence), cells[w.Id])),
        ];
    }

    /// <summary>What heads a reading: quantity / unit.</summary>
    public static string LabelOf(Practical practical, ReadingDefinition reading, int occurrence) =>
        Heading(ReadingNames.Of(practical, reading.Id, occurrence), reading.Unit);

    /// <summary>Quantity / unit, not broken between the two.</summary>
    public static string Heading(string quantity, string unit) => $"{quantity}\u00a0/\u00a0{unit}";

    private static SentReading Of(string label, CellState cell)
    {
        var counts = (EntryContent.Reading)cell.Current.Entry.Content;
        return new SentReading(
            label,
            counts.Written.ToString(),
            string.Join(", ", new[] { Word("balance", counts.Balance), Word("vessel", counts.Vessel) }.OfType<string>()),
            [.. cell.History.Where(k => !cell.Standing.Contains(k)).Select(k => Replaced(cell, k)).OfType<string>()],
            [.. cell.Rivals.Select(k => k.Entry.Content).OfType<EntryContent.Reading>().Select(r => r.Written.ToString())])
        {
            IsOwnBeside = cell.Rivals.All(k => k.Entry.Device == cell.Current.Entry.Device),
        };
    }

    private static string? Word(string name, string? value) => value is null ? null : $"{name} {value}";

    private static string? Replaced(CellState cell, KeptEntry old)
    {
        string? reason = cell.ReplacerOf(old)?.Entry.Reason;
        return old.Entry.Content is EntryContent.Reading reading ? reason is null ? $"{reading.Written}" : $"{reading.Written} ({reason})" : null;
    }
}
