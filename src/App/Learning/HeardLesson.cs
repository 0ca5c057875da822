using Calx.App.Live;
using Calx.App.Serving;
using Calx.Practicals.Learning;
using Calx.Records.Journal;

namespace Calx.App.Learning;

/// <summary>When things happened to the groups of a lesson, as its journal has them: what the groups' own devices and the teacher's taps
/// told while it ran. Readings that the teacher typed may have been typed from paper hours later, and say nothing of times.</summary>
internal static class HeardLesson
{
    /// <summary>Each group's trials; those with simulated readings are left out.</summary>
    public static IReadOnlyList<HeardTrial> TrialsOf(LessonView view)
    {
        if (view.State.BeganAt is not DateTimeOffset began)
        {
            return [];
        }

        double ended = view.State.EndedAt is DateTimeOffset over ? Math.Min((over - began).TotalMinutes, view.BellMinute) : view.BellMinute;
        return [.. view.Groups.SelectMany(group => OfGroup(view, group, began, ended))];
    }

    /// <summary>The minute at which the groups' own work began, or null.</summary>
    public static double? WorkBegan(LessonView view) =>
        view.State.BeganAt is DateTimeOffset began && view.State.WorkBeganAt is DateTimeOffset work && work > began ? (work - began).TotalMinutes : null;

    private static IEnumerable<HeardTrial> OfGroup(LessonView view, int group, DateTimeOffset began, double ended)
    {
        var state = new GroupState();
        var marks = new SortedDictionary<int, List<HeardMark>>();
        var read = new HashSet<(int, string)>();
        foreach (KeptEntry kept in view.Entries.Where(k => k.Entry.Cell.Group == group && k.Entry.Cell.Member == 0))
        {
            state.Take(kept);
            double minute = (WhenTyped.Of(kept) - began).TotalMinutes;
            if (minute <= ended && MarkOf(kept.Entry, minute, read) is HeardMark mark)
            {
                (marks.TryGetValue(state.Trial, out List<HeardMark>? of) ? of : marks[state.Trial] = []).Add(mark);
            }
        }

        bool atWork = state.Condition is Acts.Conditions.AtWork or Acts.Conditions.StartedAgain;
        return marks.Where(m => !state.IsSimulatedIn(m.Key))
            .Select(m => new HeardTrial(group, m.Key == 1, atWork && m.Key == state.Trial ? ended : null, m.Value));
    }

    private static HeardMark? MarkOf(JournalEntry entry, double minute, HashSet<(int, string)> read) => entry switch
    {
        { Content: EntryContent.Reading taken, Replaces: null } when read.Add((entry.Cell.Trial, entry.Cell.What)) =>
            entry.Device == Visitor.TeachersDevice ? null : new HeardMark.Read(minute, entry.Cell.What, taken.Balance),
        { Content: EntryContent.Happening, Cell.What: Acts.FlameOn } => new HeardMark.FlameLit(minute),
        { Content: EntryContent.Happening, Cell.What: Acts.FlameOut } => new HeardMark.FlameOut(minute),
        { Content: EntryContent.Happening step, Cell.What: Acts.AtStep } => new HeardMark.CameTo(minute, step.Text),
        _ => null,
    };
}
