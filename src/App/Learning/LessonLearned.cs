using Calx.App.Live;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.App.Learning;

/// <summary>What one lesson that is over says of the practical's numbers.</summary>
/// <param name="Seen">For the engine.</param>
/// <param name="Groups">Groups with readings of their own.</param>
public sealed record LessonLearned(PastLesson Seen, int Groups)
{
    /// <summary>Learns from a lesson. Nothing simulated is looked at.</summary>
    /// <param name="view">The lesson, over.</param>
    /// <param name="balances">The school's balances.</param>
    /// <param name="className">The name of its class.</param>
    /// <param name="faults">Counts faults for its practical's file and what holds of its class.</param>
    public static LessonLearned Of(LessonView view, LetteredBalances balances, string className, Func<PlanSettings, FaultCounts> faults)
    {
        PlanSettings plan = view.Room.PlanOfFile;
        ClassReadings? readings = LessonFindings.ReadingsOf(view, balances);
        return new LessonLearned(
            new PastLesson(
                "",
                ClassNames.Key(className),
                HeardSteps.Of(plan, HeardLesson.WorkBegan(view), HeardLesson.TrialsOf(view)),
                readings is null ? [] : faults(plan).Of(readings),
                Kit(view)),
            readings?.Groups.Count ?? 0);
    }

    /// <summary>'It broke or spilt' is said of what makes a group start again; where the practical has several such pieces nobody said
    /// which.</summary>
    private static KitSeen[] Kit(LessonView view)
    {
        if (view.Practical.Kit.Where(k => k.Loss.StartsAgain).ToArray() is not [KitItem piece])
        {
            return [];
        }

        (int Used, int Broken)[] groups = [.. view.Groups.Select(g => PiecesOf(view, g))];
        return groups.Sum(g => g.Used) is int used and > 0 ? [new KitSeen(piece.Id, used, groups.Sum(g => g.Broken))] : [];
    }

    /// <summary>One piece for each start of its own that weighed or lost it. Said twice without a new start, it broke once.</summary>
    private static (int Used, int Broken) PiecesOf(LessonView view, int group)
    {
        var state = new GroupState();
        var used = new HashSet<int>();
        var broken = new HashSet<int>();
        foreach (KeptEntry kept in view.Entries.Where(k => k.Entry.Cell.Group == group && k.Entry.Cell.Member == 0))
        {
            state.Take(kept);
            if (state.Condition == Acts.Conditions.Broken && !state.IsSimulated)
            {
                broken.Add(state.Trial);
            }

            if (kept.Entry.Content is EntryContent.Reading && !state.IsSimulatedIn(kept.Entry.Cell.Trial))
            {
                used.Add(kept.Entry.Cell.Trial);
            }
        }

        return (used.Union(broken).Count(), broken.Count);
    }
}
