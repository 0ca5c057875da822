using System.Globalization;
using Calx.App.Live;
using Calx.App.Pages.Series;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;
using Calx.Records.Journal;

namespace Calx.App.Pages.Live;

/// <summary>Puts what the engine says of a lesson on tiles.</summary>
public static class Board
{
    /// <summary>Tiles, who needs the teacher first.</summary>
    public static IReadOnlyList<GroupTile> Tiles(LiveFacts facts, IReadOnlyDictionary<int, string> names)
    {
        var byGroup = facts.Groups.ToDictionary(g => g.AtWork.Number);
        return [.. Attention.InOrder(facts.Groups.Select(g => g.Attention)).Select(a => Tile(facts, byGroup[a.Group], names))];
    }

    /// <summary>The tile of one group.</summary>
    public static GroupTile Tile(LiveFacts facts, GroupFacts group, IReadOnlyDictionary<int, string> names)
    {
        int number = group.AtWork.Number;
        GroupState state = facts.View.State.Group(number);
        KeptEntry? last = facts.View.Weighings.Select(w => facts.View.Reading(number, w.Id)).OfType<KeptEntry>().MaxBy(k => k.Number);
        return new GroupTile
        {
            Number = number,
            Now = group.Now,
            Need = NeedOf(group.Attention),
            Kind = group.Attention.Kind,
            // In a cover lesson there is nothing to do again or to cool: what a made-up group would do is the students' question.
            Decision = facts.View.State.IsCover ? null : DecisionOf(group.Advice, new WorkWords(facts.View.Practical)),
            Why = facts.View.State.IsCover || group.Advice is Advice.NotYet ? null : group.Advice.ForTeacher,
            Step = StepOf(facts, group),
            LastReading = last?.Entry.Content is EntryContent.Reading reading ? $"{reading.Written} {reading.Unit}" : null,
            LastLabel = last is null ? null : ReadingNames.OfId(facts.View.Practical, last.Entry.Cell.What),
            Points = facts.View.ReadingsOf(number).Series is { Points.Count: > 1 } ? TypedPoint.CountInWords(facts.View, number) : null,
            Since = facts.TimeOf(group.Now.SinceMinute),
            CoolAt = facts.TimeOf(group.Now.CoolEnoughAt),
            Names = [.. facts.View.State.MembersOf(number).Select(m => names.GetValueOrDefault(m)).OfType<string>()],
            Devices = state.Devices,
            Outlook = facts.Outlook?.Groups.FirstOrDefault(g => g.Group == number)?.Done is MinuteRange done && !group.Now.IsDone
                ? $"done about {facts.TimeOf(done.Median)!.Value.ToLocalTime().ToString("HH:mm", CultureInfo.InvariantCulture)}" : null,
        };
    }

    /// <summary>The class sees this screen: what a decision rests on, with its causes, is opened on demand.</summary>
    private static string? NeedOf(Attention attention) => attention.Kind switch
    {
        AttentionKind.Nothing => null,
        AttentionKind.DecisionWaiting => "Waits for what to do.",
        _ => attention.Sentence,
    };

    /// <summary>A decision in a few words; null where there is nothing to decide.</summary>
    public static string? DecisionOf(Advice advice, WorkWords work) => advice switch
    {
        Advice.StopTellYourTeacher => "Stop: go there now",
        Advice.Reheat => work.Again,
        Advice.ConstantMass => "Constant mass: stop here",
        Advice.StopHere => work.NoFurther,
        Advice.CoolAndReweigh => "Cool longer, weigh again",
        Advice.CheckReading => "Look at a reading again",
        Advice.CannotTell => "This balance cannot tell",
        _ => null,
    };

    private static string StepOf(LiveFacts facts, GroupFacts group) => group.AtWork.Condition switch
    {
        GroupCondition.Joined joined => string.Create(CultureInfo.InvariantCulture, $"shares the data of group {joined.Group}"),
        GroupCondition.Simulated => facts.View.State.IsCover ? "simulated data" : "goes on with simulated data",
        GroupCondition.Away => "nobody is here",
        _ when group.Now.IsDone => "done",
        _ when group.Now.AwaitsDecision => new WorkWords(facts.View.Practical).WeighedAfter,
        _ => group.Now.Step?.Label ?? "with the class",
    };
}
