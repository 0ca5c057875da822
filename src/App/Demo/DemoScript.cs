using Calx.App.Live;
using Calx.Measurement.Numbers;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.App.Demo;

/// <summary>What happens in the demo's lesson, minute by minute: the steps of a simulated lesson, with the readings of a simulated
/// class. All of it is invented.</summary>
public sealed class DemoScript
{
    /// <summary>In min: what follows at once is typed a moment later.</summary>
    private const double Moment = 0.1;

    private readonly Practical practical;
    private readonly SimulatedClass drawn;
    private readonly LessonTimeline timeline;
    private readonly Func<string, EntryId> id;
    private readonly bool taps;

    /// <summary>Writes it.</summary>
    /// <param name="plan">The lesson's plan.</param>
    /// <param name="timeline">A simulated run of it.</param>
    /// <param name="drawn">The class's readings.</param>
    /// <param name="id">The id of an entry by its name.</param>
    /// <param name="taps">Whether groups tap 'done' from one heating to the next.</param>
    public DemoScript(PlanSettings plan, LessonTimeline timeline, SimulatedClass drawn, Func<string, EntryId> id, bool taps)
    {
        this.taps = taps;
        practical = plan.Practical;
        this.timeline = timeline;
        this.drawn = drawn;
        this.id = id;
    }

    /// <summary>Every entry with its minute, in order.</summary>
    public IReadOnlyList<DemoEntry> Entries() =>
        [.. Enumerable.Range(1, drawn.Groups.Count).SelectMany(OfGroup).Concat(Extras()).OrderBy(e => e.Minute)];

    private IEnumerable<DemoEntry> OfGroup(int group)
    {
        var taken = new Dictionary<string, int>(StringComparer.Ordinal);
        TimelineBar[] bars = [.. timeline.Bars.Where(b => b.Group == group && b.Kind != BarKind.Waiting).OrderBy(b => b.FromMinute)];
        bool burning = false;
        foreach (TimelineBar bar in bars)
        {
            if (bar.Kind == BarKind.Flame && !burning)
            {
                burning = true;
                if (taken.Count > 2)
                {
                    yield return Happening(bar.FromMinute + Moment, group, Acts.Decided, GroupDecision.Reheat);
                }

                yield return Happening(bar.FromMinute + (2 * Moment), group, Acts.FlameOn);
            }

            if (burning && bar.Kind == BarKind.Flame && bar.StepId is string step && taps)
            {
                yield return Happening(bar.FromMinute + (3 * Moment), group, Acts.AtStep, step);
            }

            if (burning && bar.Kind == BarKind.Cooling)
            {
                burning = false;
                yield return Happening(bar.FromMinute, group, Acts.FlameOut);
            }

            if (practical.Steps.FirstOrDefault(s => s.Id == bar.StepId)?.Reading is string reading)
            {
                int occurrence = taken[reading] = taken.GetValueOrDefault(reading) + 1;
                if (drawn.Groups[group - 1].Readings.FirstOrDefault(r => r.Weighing.Reading == reading && r.Weighing.Occurrence == occurrence) is SimulatedReading read)
                {
                    string what = TakenReading.IdOf(reading, occurrence);
                    yield return Entry(
                        bar.ToMinute, new JournalCell(group, 1, what), new EntryContent.Reading(read.Written, practical.Reading(reading).Unit, group % 2 == 1 ? "A" : "B", FormattableString.Invariant($"{group}")));
                }
            }
        }
    }

    /// <summary>What a lesson has besides: smoke, a grey powder, a raised hand.</summary>
    private IEnumerable<DemoEntry> Extras()
    {
        yield return Happening(timeline.Bars.Where(b => b.Kind == BarKind.Class).Min(b => b.ToMinute), 0, Acts.WorkBegan);
        yield return Entry(26, new JournalCell(3, 1, "smoke-seen"), new EntryContent.Observation(true));
        yield return Entry(31, new JournalCell(8, 1, "grey-specks"), new EntryContent.Observation(true));
        yield return Entry(33, new JournalCell(5, 1, "dull-ribbon"), new EntryContent.Observation(true));
        yield return Happening(DemoLesson.Minute - 2, 10, Acts.Help);
        yield return Happening(DemoLesson.Minute - 4, 7, Acts.CorrectionAsked, "before: we typed another group's reading; the paper record says so");
    }

    private DemoEntry Happening(double minute, int group, string what, string text = "") =>
        Entry(minute, new JournalCell(group, 1, what), new EntryContent.Happening(text));

    private DemoEntry Entry(double minute, JournalCell cell, EntryContent content) =>
        new(minute, cell, content, id(FormattableString.Invariant($"{cell.Group}/{cell.What}/{minute:R}")), FormattableString.Invariant($"d-demo{cell.Group}"));
}
