using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>What needs the teacher, and in which order.</summary>
public sealed class AttentionTests
{
    private const string Weighed = "empty=28.60@15 before=28.84@18 after=28.99@45 after2=29.00@62";

    [Fact]
    public void One_thing_is_said_and_the_most_urgent_wins()
    {
        // From nothing to everything at once: each addition outranks the one before.
        LessonMoment now = At(72, lastHeating: 70);
        Assert.Equal(AttentionKind.Nothing, Of(Group("empty=28.60@70"), now).Kind);
        Assert.Equal(AttentionKind.DecisionWaiting, Of(Group(Weighed), now).Kind);
        Assert.Equal(AttentionKind.QueriedTwice, Of(Group(Weighed, calls: new GroupCalls(queries: 2)), now).Kind);
        Assert.Equal(AttentionKind.CorrectionAsked, Of(Group(Weighed, calls: new GroupCalls(correction: 70, queries: 2)), now).Kind);
        Assert.Equal(AttentionKind.StillHeating, Of(Group(Weighed, lit: 66, calls: new GroupCalls(correction: 70)), now).Kind);
        Assert.Equal(AttentionKind.HelpAsked, Of(Group(Weighed, lit: 66, calls: new GroupCalls(help: 71, correction: 70)), now).Kind);
        Assert.Equal(AttentionKind.BrokenVessel, Of(Group(Weighed, calls: new GroupCalls(help: 71, broken: 71.5)), now).Kind);
        Assert.Equal(AttentionKind.Stop, Of(Group(Weighed, observations: ["cracked"], calls: new GroupCalls(help: 71, broken: 71.5)), now).Kind);
    }

    // A gain of 36 g from 0.24 g of magnesium: no lid and no soot weighs so much.
    [Fact]
    public void A_reading_that_cannot_be_needs_the_teacher_before_corrections_and_after_danger()
    {
        const string Impossible = "empty=15.10@15 before=15.34@18 after=51.74@45";
        LessonMoment now = At(48, lastHeating: 70);
        Attention found = Of(Group(Impossible, calls: new GroupCalls(correction: 46, queries: 2)), now);
        Assert.Equal(AttentionKind.ImpossibleReading, found.Kind);
        Assert.DoesNotMatch("[0-9]", found.Sentence);
        Assert.Equal(AttentionKind.HelpAsked, Of(Group(Impossible, calls: new GroupCalls(help: 46)), now).Kind);
        Assert.NotEqual(AttentionKind.ImpossibleReading, Of(Group("empty=15.10@15 before=15.34@18 after=15.38@45"), now).Kind);
    }

    [Fact]
    public void A_flame_before_the_last_call_needs_nobody()
    {
        Assert.Equal(AttentionKind.Nothing, Of(Group(Weighed, lit: 66), At(70, lastHeating: 70)).Kind);
        Assert.Equal(AttentionKind.Nothing, Of(Group(Weighed, lit: 66, flameOut: 69), At(72, lastHeating: 70)).Kind);
    }

    [Fact]
    public void A_group_that_decided_does_not_wait_for_a_decision()
    {
        Assert.Equal(AttentionKind.Nothing, Of(Group(Weighed, decided: new OwnDecision("after2", false, 63)), At(64)).Kind);
    }

    [Fact]
    public void Longer_than_everything_up_to_the_next_reading_can_take_is_too_long()
    {
        // Weighing with the magnesium takes 2 min at most, and 3 min of patience.
        Assert.Equal(AttentionKind.Nothing, Of(Group("empty=28.60@15"), At(20)).Kind);
        Attention late = Of(Group("empty=28.60@15"), At(21));
        Assert.Equal((AttentionKind.WaitingLong, 15.0), (late.Kind, late.SinceMinute));
        Assert.Equal("Nothing heard for 6 min at 'weigh with the magnesium': longer than usual.", late.Sentence);
    }

    [Fact]
    public void Groups_come_in_the_order_of_need_then_of_waiting_then_of_their_numbers()
    {
        Attention[] given =
        [
            new(4, AttentionKind.Nothing, "", null), new(3, AttentionKind.HelpAsked, "", 20), new(2, AttentionKind.HelpAsked, "", 18),
            new(1, AttentionKind.DecisionWaiting, "", 5), new(6, AttentionKind.HelpAsked, "", 18), new(5, AttentionKind.Stop, "", 30),
        ];
        Assert.Equal([5, 2, 6, 3, 1, 4], Attention.InOrder(given).Select(a => a.Group));
        Assert.Equal([5, 2, 6, 3, 1, 4], Attention.InOrder(given.Reverse()).Select(a => a.Group));
    }

    [Fact]
    public void The_sentence_says_how_long_ago()
    {
        Assert.Equal("Asked for help 3 min ago.", Of(Group("", calls: new GroupCalls(help: 17)), At(20)).Sentence);
        Assert.Equal("Asked for help just now.", Of(Group("", calls: new GroupCalls(help: 19.5)), At(20)).Sentence);
    }

    private static Attention Of(GroupAtWork group, LessonMoment moment) =>
        Watch.AttentionFor(group, Watch.AdviceFor(group, moment), moment);
}
