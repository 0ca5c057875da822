using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>A group of a lesson as the engine takes it: its readings, and minutes instead of times.</summary>
public static class AtWork
{
    /// <summary>The group with a number.</summary>
    /// <param name="view">The lesson.</param>
    /// <param name="balances">The school's balances.</param>
    /// <param name="number">The group's number.</param>
    /// <param name="onBalance">Letter of the balance that it stands at; null for the one that it used last.</param>
    public static GroupAtWork Of(LessonView view, LetteredBalances balances, int number, string? onBalance = null)
    {
        GroupState state = view.State.Group(number);
        var readAt = new Dictionary<string, double>(StringComparer.Ordinal);
        string? letter = null;
        foreach ((_, _, string id) in view.Weighings)
        {
            if (view.Reading(number, id) is { Entry.Content: EntryContent.Reading taken } kept)
            {
                readAt[id] = view.MinuteAt(WhenTyped.Of(kept)) ?? 0;
                letter = taken.Balance ?? letter;
            }
        }

        return new GroupAtWork(
            number,
            state.Trial,
            balances.Of(onBalance ?? letter) ?? view.Room.Plan.Balances[(number - 1) % view.Room.Plan.Balances.Count],
            view.ReadingsOf(number),
            Moments(view, state, readAt),
            Condition(view, state, number),
            Calls(view, state));
    }

    /// <summary>A group with simulated readings as if it took them itself: its way and what it is advised are those of any group.</summary>
    public static GroupAtWork AsIfWeighing(GroupAtWork group) => group.Condition is GroupCondition.Simulated
        ? new(group.Number, group.Trial, group.Balance, group.Readings, group.Moments, new GroupCondition.StartedAgain()) : group;

    private static GroupMoments Moments(LessonView view, GroupState state, Dictionary<string, double> readAt) => new(
        readAt,
        Minute(view, state.FlameOnAt),
        Minute(view, state.FlameOutAt),
        state.Told is (string step, DateTimeOffset at) && view.Practical.Steps.Any(s => s.Id == step) ? new ToldStep(step, Minute(view, at) ?? 0) : null,
        state.Decided is GroupDecision decided ? new OwnDecision(decided.Weighing, decided.HeatsAgain, Minute(view, decided.At) ?? 0) : null);

    private static GroupCondition Condition(LessonView view, GroupState state, int number)
    {
        bool allAway = view.State.Members.Any(m => m.Value.Group == number) && !view.State.MembersOf(number).Any();
        return state switch
        {
            { JoinedGroup: int other } when other >= 1 => new GroupCondition.Joined(other),
            { Condition: Acts.Conditions.Simulated } => new GroupCondition.Simulated(),
            { Condition: Acts.Conditions.Finished } => new GroupCondition.Finished(),
            { Condition: Acts.Conditions.Absent } => new GroupCondition.Away(),
            _ when allAway => new GroupCondition.Away(),
            { Trial: > 1 } => new GroupCondition.StartedAgain(),
            _ => new GroupCondition.AtWork(),
        };
    }

    private static GroupCalls Calls(LessonView view, GroupState state) => new(
        Minute(view, state.HelpAskedAt),
        Minute(view, state.CorrectionAskedAt),
        Minute(view, state.BrokenAt),
        state.LastWeighing is string last ? state.KeptAfterAsking(last) : 0);

    /// <summary>Before the lesson's clock has started everything happens in its first minute.</summary>
    private static double? Minute(LessonView view, DateTimeOffset? time) => time is DateTimeOffset at ? view.MinuteAt(at) ?? 0 : null;
}
