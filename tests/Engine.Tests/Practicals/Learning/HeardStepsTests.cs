using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Clock;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>Times of steps from what was heard of groups. Expected minutes are differences of the marks, worked out by hand with the
/// file's means (least + 4 likely + most) / 6 (D. G. Malcolm et al., Operations Research 7 (1959) 646).</summary>
public sealed class HeardStepsTests
{
    /// <summary>Mean of [0.42, 0.75, 2] min.</summary>
    private const double Weighing = (0.42 + 3 + 2) / 6;

    private static readonly PlanSettings Plan = new PlanSettings(Given.Magnesium, 4, Given.Balances(2), 100).WithPrepared(true).WithMoved("brief");

    [Fact]
    public void Cooling_lasts_from_the_flame_s_end_to_the_reading_less_the_weighing()
    {
        StepSeen cool = Assert.Single(Of(Group(1, Filled, new HeardMark.FlameLit(10), new HeardMark.FlameOut(30), new HeardMark.Read(44, "after", "A"))));
        Assert.Equal("cool", cool.Step);
        Assert.Equal(14 - Weighing, cool.Minutes, 9);
        Assert.False(cool.IsAtLeast);
    }

    [Theory]
    [InlineData("A", 0)]
    [InlineData("B", 1)]
    [InlineData(null, 0)]
    public void A_group_that_may_have_waited_for_its_balance_says_nothing(string? other, int expected) => Assert.Equal(
        expected,
        Of(
            Group(1, Filled, new HeardMark.FlameLit(10), new HeardMark.FlameOut(30), new HeardMark.Read(44, "after", "A")),
            Group(2, new HeardMark.Read(43, "after", other))).Count(s => s.Step == "cool"));

    [Fact]
    public void A_step_between_two_taps_is_timed_and_brought_to_the_usual_sample()
    {
        HeardTrial group = Group(1, Filled, new HeardMark.FlameLit(10), new HeardMark.CameTo(12, "burn"), new HeardMark.CameTo(22, "finish"), new HeardMark.FlameOut(25));
        Assert.Equal([("gentle-start", 2.0), ("burn", 10), ("finish", 3)], Of(group).Select(s => (s.Step, s.Minutes)));
        // A quarter of the usual 0.24 g burns half as long: the file says that the time grows with the root of the mass.
        StepSeen burn = HeardSteps.Of(Plan.WithSample(0.06), null, [group]).Single(s => s.Step == "burn");
        Assert.Equal(20, burn.Minutes, 9);
    }

    [Fact]
    public void A_flame_over_several_steps_and_a_look_of_the_teacher_say_nothing_of_single_steps() => Assert.Empty(Of(
        Group(1, new HeardMark.Read(9, "before", "A"), new HeardMark.FlameLit(12), new HeardMark.FlameOut(30))));

    [Fact]
    public void Settling_down_is_what_the_class_does_before_its_work_begins()
    {
        StepSeen settled = Assert.Single(HeardSteps.Of(Plan, 5, []));
        Assert.Equal(("arrive", 5.0), (settled.Step, settled.Minutes));
        // With the briefing in the lesson, the two cannot be told apart.
        Assert.Empty(HeardSteps.Of(new PlanSettings(Given.Magnesium, 4, Given.Balances(2), 100), 12, []));
    }

    [Fact]
    public void A_reheat_that_the_bell_cut_short_lasted_at_least_so_long()
    {
        StepSeen cut = Of(Ended(54, new HeardMark.Read(46, "after", "A"), new HeardMark.FlameLit(50))).Single();
        Assert.Equal(("reheat", 4.0, true), (cut.Step, cut.Minutes, cut.IsAtLeast));
        // The file's longest reheat takes 7 min: of a group that is silent for longer nobody knows what it did.
        Assert.Empty(Of(Ended(60, new HeardMark.Read(46, "after", "A"), new HeardMark.FlameLit(50))));
    }

    [Fact]
    public void Each_heating_is_timed_by_itself()
    {
        IReadOnlyList<StepSeen> seen = Of(Group(
            1, Filled, new HeardMark.FlameLit(10), new HeardMark.FlameOut(25), new HeardMark.Read(39, "after", "A"),
            new HeardMark.FlameLit(42), new HeardMark.FlameOut(47), new HeardMark.Read(62, "after2", "A")));
        Assert.Equal(["cool", "reheat", "cool"], seen.Select(s => s.Step));
        Assert.Equal(5, seen[1].Minutes, 9);
        Assert.Equal(15 - Weighing, seen[2].Minutes, 9);
    }

    [Fact]
    public void What_was_heard_out_of_order_is_passed_over() =>
        Assert.Empty(Of(Group(1, new HeardMark.Read(30, "after", "A"), new HeardMark.CameTo(31, "burn"), new HeardMark.CameTo(32, "no-such-step"))));

    private static HeardMark Filled => new HeardMark.Read(9, "before", "A");

    private static IReadOnlyList<StepSeen> Of(params HeardTrial[] trials) => HeardSteps.Of(Plan, null, trials);

    private static HeardTrial Group(int number, params HeardMark[] marks) => new(number, isFirst: true, null, marks);

    private static HeardTrial Ended(double minute, params HeardMark[] marks) => new(1, isFirst: true, minute, marks);
}
