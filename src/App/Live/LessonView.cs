using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>A lesson at one place of its journal. It does not change.</summary>
public sealed class LessonView
{
    private readonly ILookup<(int Group, int Trial), CellState> cells;

    public LessonView(LessonRoom room, IReadOnlyList<CellState> table, long number, LessonState state, IReadOnlyList<KeptEntry> entries)
    {
        Room = room;
        Number = number;
        State = state;
        // A copy: the journal goes on growing.
        Entries = [.. entries];
        Table = table;
        cells = table.Where(c => c.Cell.Member == 0).ToLookup(c => (c.Cell.Group, c.Cell.Trial));
    }

    /// <summary>The room that it is a view of.</summary>
    public LessonRoom Room { get; }

    /// <summary>The practical.</summary>
    public Practical Practical => Room.Practical;

    /// <summary>Place of the last entry in the journal.</summary>
    public long Number { get; }

    /// <summary>What its happenings add up to.</summary>
    public LessonState State { get; }

    /// <summary>The whole journal.</summary>
    public IReadOnlyList<KeptEntry> Entries { get; }

    /// <summary>Every cell in which something was typed.</summary>
    public IReadOnlyList<CellState> Table { get; }

    /// <summary>The entry with an id, or null.</summary>
    public KeptEntry? Find(EntryId id) => Entries.FirstOrDefault(e => e.Entry.Id == id);

    /// <summary>Place of the last entry that a group's page shows: its own, or one of the whole lesson.</summary>
    public long NumberFor(int group) => Entries.LastOrDefault(e => e.Entry.Cell.Group == group || (e.Entry.Cell.Group == 0 && !IsOfOneStudent(e.Entry.Cell)))?.Number ?? 0;

    /// <summary>What one student answered changes nothing on the pages of others: a class that answers would have all of them fetched anew.</summary>
    private static bool IsOfOneStudent(JournalCell cell) => cell.Member > 0
        && (cell.What.StartsWith(Acts.AnswerPrefix, StringComparison.Ordinal) || cell.What.StartsWith(Acts.MarkPrefix, StringComparison.Ordinal) || cell.What == Acts.AnswersFor);

    /// <summary>Numbers of the groups, from 1.</summary>
    public IEnumerable<int> Groups => Enumerable.Range(1, GroupCount);

    /// <summary>How many groups there are: those planned, and those added since.</summary>
    public int GroupCount => Math.Min(Room.Lesson.Groups + State.AddedGroups, MostGroups);

    /// <summary>How many there may be: no more than may do the practical side by side.</summary>
    public int MostGroups => Math.Min(Room.Practical.Limits.Groups ?? PlanSettings.MostGroups, PlanSettings.MostGroups);

    /// <summary>Minutes since the beginning, or null before it.</summary>
    public double? MinuteAt(DateTimeOffset time) => State.BeganAt is DateTimeOffset began ? (time - began).TotalMinutes : null;

    /// <summary>The bell's minute since the beginning.</summary>
    public double BellMinute => State.MovedBell ?? Room.Lesson.Minutes;

    /// <summary>The cell of a group's present trial, or null where nothing was typed.</summary>
    public CellState? Cell(int group, string what) =>
        cells[(group, State.Group(group).Trial)].FirstOrDefault(c => c.Cell.What == what);

    /// <summary>The reading that counts in a cell, or null.</summary>
    public KeptEntry? Reading(int group, string weighing) =>
        Cell(group, weighing)?.Current is { Entry.Content: EntryContent.Reading } kept ? kept : null;

    /// <summary>Ids of what a group has seen in its present trial.</summary>
    public IReadOnlyList<string> SeenBy(int group) => ReadingsOf(group).Remarks.Observations;

    /// <summary>A group's readings and observations of its present trial, as the engine takes them.</summary>
    public GroupReadings ReadingsOf(int group) => LessonReadings.OfGroup(
        FormattableString.Invariant($"{group}"), null, [.. cells[(group, State.Group(group).Trial)]], Practical);

    /// <summary>Every weighing of the sheet, repeats one by one, in the order of the practical.</summary>
    public IEnumerable<(ReadingDefinition Reading, int Occurrence, string Id)> Weighings =>
        Practical.Readings.Where(r => !Room.Plan.Unread.Contains(r.Id)).SelectMany(r => Enumerable.Range(1, Math.Max(1, r.Repeats))
            .Select(n => (r, n, TakenReading.IdOf(r.Id, n))));
}
