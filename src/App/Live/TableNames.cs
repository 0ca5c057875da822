using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>What groups are called in the tables of an export: simulated readings never stand there without their mark.</summary>
public static class TableNames
{
    /// <summary>The name of a group by its number and trial.</summary>
    /// <param name="journal">The lesson's whole journal.</param>
    public static Func<int, int, string> Of(LessonJournal journal)
    {
        LessonState state = LessonState.Of(journal);
        return (group, trial) => state.Group(group).IsSimulatedIn(trial)
            ? FormattableString.Invariant($"{group} {GroupReadings.SimulatedMark}") : FormattableString.Invariant($"{group}");
    }
}
