using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>Who needs the teacher first.</summary>
public sealed class AttentionOrderTests
{
    [Fact]
    public void What_is_dangerous_comes_first_then_who_waits_longest()
    {
        GroupAtWork[] groups =
        [
            Group("empty=28.60@15", number: 1),
            Group("empty=28.60@15 before=28.84@18 after=28.98@45", number: 2),
            Group("empty=28.60@15 before=28.84@18", lit: 25, number: 3, calls: new GroupCalls(help: 40)),
            Group("empty=28.60@15 before=28.84@18", lit: 25, number: 4, calls: new GroupCalls(help: 38)),
            Group("empty=28.60@15 before=28.84@18", lit: 25, number: 5, observations: ["cracked"]),
            Group("empty=28.60@15 before=28.84@18", lit: 25, number: 6, calls: new GroupCalls(broken: 44)),
            Group("empty=28.60@15 before=28.84@18", lit: 25, number: 7, calls: new GroupCalls(correction: 41)),
        ];
        LessonMoment moment = At(46);
        IReadOnlyList<Attention> order = Attention.InOrder(groups.Reverse().Select(g => Watch.AttentionFor(g, Watch.AdviceFor(g, moment), moment)));
        Assert.Equal([5, 6, 4, 3, 7, 2], order.Take(6).Select(a => a.Group));
        Assert.Equal(
            [AttentionKind.Stop, AttentionKind.BrokenVessel, AttentionKind.HelpAsked, AttentionKind.HelpAsked, AttentionKind.CorrectionAsked, AttentionKind.DecisionWaiting],
            order.Take(6).Select(a => a.Kind));
    }

    [Fact]
    public void Who_still_heats_after_the_last_call_is_named()
    {
        GroupAtWork group = Group("empty=28.60@15 before=28.84@18 after=28.95@45", lit: 68);
        LessonMoment moment = At(75, lastHeating: 65);
        Assert.Equal(AttentionKind.StillHeating, Watch.AttentionFor(group, Watch.AdviceFor(group, moment), moment).Kind);
    }
}
