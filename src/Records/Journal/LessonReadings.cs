using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.Records.Journal;

/// <summary>A lesson's table as the engine reads it: each group's current readings in the practical's order, and what it saw.</summary>
public static class LessonReadings
{
    /// <summary>The groups that have typed something, in order. A cell that the practical does not know, or that concerns one member or the
    /// whole lesson, is left out here; it stays in the journal.</summary>
    public static IReadOnlyList<GroupReadings> Of(LessonJournal journal, Practical practical)
    {
        ArgumentNullException.ThrowIfNull(journal);
        ArgumentNullException.ThrowIfNull(practical);
        var groups = journal.Table.Where(IsOfGroup).GroupBy(c => (c.Cell.Group, c.Cell.Trial)).ToArray();
        bool severalTrials = groups.Any(g => g.Key.Trial > 1);
        return
        [
            .. groups.Select(g => OfGroup(
                FormattableString.Invariant($"G{g.Key.Group}"), severalTrials ? FormattableString.Invariant($"{g.Key.Trial}") : null, [.. g], practical)),
        ];
    }

    /// <summary>One group's readings and observations of one trial.</summary>
    /// <param name="name">The name to give it.</param>
    /// <param name="trial">The trial to name, or null.</param>
    /// <param name="cells">Its cells of that trial.</param>
    /// <param name="practical">The practical.</param>
    public static GroupReadings OfGroup(string name, string? trial, IReadOnlyList<CellState> cells, Practical practical)
    {
        ArgumentNullException.ThrowIfNull(cells);
        ArgumentNullException.ThrowIfNull(practical);
        TakenReading[] taken = [.. ReadingsOf(practical, cells)];
        return new GroupReadings(
            name, trial, taken, remarks: new GroupRemarks(observations: [.. SeenIn(practical, cells)]), series: SeriesOf(practical, cells, taken));
    }

    private static bool IsOfGroup(CellState cell) =>
        cell.Cell is { Group: > 0, Member: 0 } && cell.Current.Entry.Content is EntryContent.Reading or EntryContent.Observation;

    private static IEnumerable<TakenReading> ReadingsOf(Practical practical, IReadOnlyList<CellState> cells)
    {
        foreach (ReadingDefinition reading in practical.Readings)
        {
            for (int occurrence = 1; occurrence <= Math.Max(1, reading.Repeats); occurrence++)
            {
                string id = TakenReading.IdOf(reading.Id, occurrence);
                if (cells.FirstOrDefault(c => c.Cell.What == id)?.Current.Entry.Content is EntryContent.Reading taken)
                {
                    yield return new TakenReading(reading.Id, occurrence, taken.Written, taken.Unit, balance: taken.Balance);
                }
            }
        }
    }

    /// <summary>Mass against time, or null where the practical takes none.</summary>
    private static GroupSeries? SeriesOf(Practical practical, IReadOnlyList<CellState> cells, TakenReading[] taken)
    {
        if (practical.Series is not SeriesDefinition series)
        {
            return null;
        }

        var typed = cells.GroupBy(c => c.Cell.What).ToDictionary(g => g.Key, g => g.First().Current.Entry.Content as EntryContent.Reading, StringComparer.Ordinal);
        return GroupSeries.Of(
            series,
            series.TimesInMinutes.Where(t => typed.GetValueOrDefault(series.PointId(t)) is not null).Select(t => (t, typed[series.PointId(t)]!.Written)),
            taken);
    }

    /// <summary>An observation may be taken back and noted again: what was said last holds.</summary>
    private static IEnumerable<string> SeenIn(Practical practical, IEnumerable<CellState> cells) => cells
        .Where(c => c.History[^1].Entry.Content is EntryContent.Observation { Seen: true } && practical.Observations.Any(o => o.Id == c.Cell.What))
        .Select(c => c.Cell.What);
}
