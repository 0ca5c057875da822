using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>Where groups stand. Steps of the prepared magnesium lesson: arrive, brief (class), set-up, weigh-empty, weigh-before,
/// check, gentle-start, burn, finish, cool, weigh-after; reheat, cool, weigh-after; work-out, clear-up, exit-talk (class).</summary>
public sealed class StandingTests
{
    [Theory]
    [InlineData("", "set-up", "empty", HeatState.NotBegun)]
    [InlineData("empty=28.60@15", "weigh-before", "before", HeatState.NotBegun)]
    [InlineData("empty=28.60@15 before=28.84@18", "check", "after", HeatState.NotBegun)]
    [InlineData("empty=28.60@15 before=28.84@18 after=28.98@50", "reheat", "after2", HeatState.Out)]
    [InlineData("empty=28.60@15 before=28.84@18 after=28.98@50 after2=28.99@70", "work-out", null, HeatState.Out)]
    public void A_reading_brings_the_group_to_the_step_behind_it(string readings, string step, string? next, HeatState heat)
    {
        GroupNow now = Watch.Now(Group(readings), At(71), classBegan: true);
        Assert.Equal((step, next, heat), (now.Step!.Id, now.Next?.Id, now.Heat));
    }

    [Fact]
    public void The_next_reading_is_named_as_on_the_sheet_with_the_decimals_of_the_balance()
    {
        GroupNow now = Watch.Now(Group("empty=28.60@15 before=28.84@18 after=28.98@50", balance: new Balance(0.001)), At(51), classBegan: true);
        Assert.Equal(("Mass after reheating", "g", 3), (now.Next!.Label, now.Next.Unit, now.Next.Decimals));
    }

    [Fact]
    public void Before_anything_is_heard_the_class_is_together_by_its_likely_times()
    {
        // Arriving takes 4 min, the briefing 8.
        Assert.Equal("arrive", Watch.Now(Group(""), At(3, workBegan: null), classBegan: false).Step!.Id);
        GroupNow brief = Watch.Now(Group(""), At(5, workBegan: null), classBegan: false);
        Assert.Equal(("brief", 4.0), (brief.Step!.Id, brief.SinceMinute));
        Assert.Equal("set-up", Watch.Now(Group(""), At(5, workBegan: null), classBegan: true).Step!.Id);
    }

    [Fact]
    public void A_step_that_is_told_counts_from_when_it_was_told_until_a_reading_overtakes_it()
    {
        GroupNow burning = Watch.Now(Group("empty=28.60@15 before=28.84@18", told: new ToldStep("burn", 22)), At(25), true);
        Assert.Equal(("burn", 22.0, HeatState.Burning, "finish"), (burning.Step!.Id, burning.SinceMinute, burning.Heat, burning.Following!.Id));
        GroupNow overtaken = Watch.Now(Group("empty=28.60@15 before=28.84@18 after=28.98@50", told: new ToldStep("burn", 22)), At(51), true);
        Assert.Equal(("reheat", 50.0), (overtaken.Step!.Id, overtaken.SinceMinute));
    }

    [Fact]
    public void A_step_done_while_another_goes_on_is_the_step_during_which_it_is_done()
    {
        GroupNow now = Watch.Now(Group("empty=28.60@15 before=28.84@18", told: new ToldStep("write", 40)), At(41), true);
        Assert.Equal("cool", now.Step!.Id);
    }

    [Fact]
    public void The_flame_lit_begins_the_heating_and_put_out_begins_the_cooling()
    {
        GroupNow lit = Watch.Now(Group("empty=28.60@15 before=28.84@18", lit: 20), At(25), true);
        Assert.Equal(("gentle-start", HeatState.Burning, 20.0), (lit.Step!.Id, lit.Heat, lit.SinceMinute));
        GroupNow put = Watch.Now(Group("empty=28.60@15 before=28.84@18", lit: 20, flameOut: 38), At(40), true);
        Assert.Equal(("cool", HeatState.Out, 38.0), (put.Step!.Id, put.Heat, put.SinceMinute));
    }

    [Fact]
    public void A_flame_of_the_heating_before_says_nothing_of_the_next()
    {
        GroupNow now = Watch.Now(Group("empty=28.60@15 before=28.84@18 after=28.98@50", lit: 20, flameOut: 36), At(51), true);
        Assert.Equal("reheat", now.Step!.Id);
        Assert.Null(now.CoolEnoughAt);
    }

    [Fact]
    public void A_flame_lit_again_is_not_out()
    {
        GroupNow now = Watch.Now(Group("empty=28.60@15 before=28.84@18", lit: 33, flameOut: 30), At(34), true);
        Assert.Equal(HeatState.Burning, now.Heat);
        Assert.Null(now.CoolEnoughAt);
    }

    [Fact]
    public void A_group_that_has_weighed_after_heating_decides_until_it_goes_on()
    {
        const string weighed = "empty=28.60@15 before=28.84@18 after=28.98@50 after2=29.00@70";
        Assert.True(Watch.Now(Group(weighed), At(71), true).AwaitsDecision);
        GroupNow again = Watch.Now(Group(weighed, decided: new OwnDecision("after2", true, 72)), At(73), true);
        Assert.Equal((false, "reheat", "after3", 3), (again.AwaitsDecision, again.Step!.Id, again.Next!.Id, again.Heating));
        GroupNow stops = Watch.Now(Group(weighed, decided: new OwnDecision("after2", false, 72)), At(73), true);
        Assert.Equal((false, "work-out", null), (stops.AwaitsDecision, stops.Step!.Id, stops.Next?.Id));
        Assert.False(Watch.Now(Group(weighed, lit: 72), At(73), true).AwaitsDecision);
        Assert.True(Watch.Now(Group(weighed, decided: new OwnDecision("after", true, 52)), At(73), true).AwaitsDecision);
        Assert.False(Watch.Now(Group(weighed + " after3=29.01@90"), At(91), true).AwaitsDecision);
    }

    [Fact]
    public void A_reading_that_was_passed_over_is_named()
    {
        GroupNow now = Watch.Now(Group("before=28.84@18"), At(19), true);
        Assert.Equal(["Mass of empty crucible and lid"], now.PassedOver);
        Assert.Equal("after", now.Next!.Id);
    }

    [Fact]
    public void Groups_without_readings_of_their_own_go_on_with_what_follows_the_trials()
    {
        GroupNow joined = Watch.Now(Group("empty=28.60@15", condition: new GroupCondition.Joined(3)), At(40), true);
        Assert.Equal(("work-out", null, false), (joined.Step!.Id, joined.Next, joined.IsDone));
        Assert.True(Watch.Now(Group("", condition: new GroupCondition.Finished()), At(40), true).IsDone);
        Assert.Null(Watch.Now(Group("", condition: new GroupCondition.Away()), At(40), true).Step);
    }

    [Fact]
    public void Firing_the_empty_vessel_is_a_heating_of_its_own()
    {
        var watch = new LessonWatch(new PlanSettings(Magnesium, 12, [Centigram], 120), Calx.Chemistry.Elements.AtomicWeights.Iupac2024, 1);
        GroupNow fired = watch.Now(Group("", lit: 15, flameOut: 21), At(22), true);
        Assert.Equal(("cool-empty", "empty", HeatState.Out), (fired.Step!.Id, fired.Next!.Id, fired.Heat));
        Assert.Equal(21 + 14.052, fired.CoolEnoughAt!.Value, 3);
        Assert.Equal("weigh-empty", watch.Now(Group("", flameOut: 21, told: new ToldStep("weigh-empty", 33)), At(34), true).Step!.Id);
    }
}
