using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>
/// When what was heated may be weighed, worked out by hand. Half a division of 0.01 g is 5 mg; at 0.30 mg for each kelvin, the
/// upper end that the practicals say, that is 16.67 K. The curve for magnesium falls from 20 K at 13 min to 10 K at 17 min, straight
/// in its logarithm: 13 + 4 ln(20/16.67)/ln 2 = 14.052 min.
/// </summary>
public sealed class CoolingTests
{
    private const string Weighed = "empty=28.60@15 before=28.84@18";

    [Theory]
    [InlineData(0.01, 14.052)]
    // 0.5 mg is 1.667 K; below the last points, 5 K at 21 and 2.6 K at 26 min: 26 + 5 ln(2.6/1.667)/ln(5/2.6) = 29.400.
    [InlineData(0.001, 29.400)]
    // 50 mg is 167 K, reached before the 10 min that the step takes at least.
    [InlineData(0.1, 10)]
    public void It_is_cool_enough_when_warmth_moves_the_reading_by_less_than_half_a_division(double step, double minutes)
    {
        GroupNow now = Watch.Now(Group(Weighed, flameOut: 30, balance: new Balance(step)), At(31), true);
        Assert.Equal(30 + minutes, now.CoolEnoughAt!.Value, 3);
        Assert.Equal(minutes - 1, now.MinutesToCool(31)!.Value, 3);
        Assert.Equal(0, now.MinutesToCool(30 + minutes + 5));
    }

    [Fact]
    public void The_smaller_open_crucible_of_the_copper_salt_is_ready_sooner()
    {
        // 20 K at 7 min, 10 K at 9.3 min: 7 + 2.3 ln(20/16.67)/ln 2 = 7.605.
        Practical copper = BuiltInPracticals.Find("copper-sulfate-hydrate")!;
        var watch = new LessonWatch(
            new PlanSettings(copper, 12, [Centigram], 100).WithPrepared(true), Calx.Chemistry.Elements.AtomicWeights.Iupac2024, 1);
        GroupNow now = watch.Now(Group("empty=18.60@15 before=21.10@18", flameOut: 30, practical: copper), At(31), true);
        Assert.Equal(37.605, now.CoolEnoughAt!.Value, 3);
    }

    [Fact]
    public void It_is_never_said_before_the_step_could_end_in_this_plan()
    {
        var watch = new LessonWatch(Plan.WithTime("cool", new StepMinutes(18, 20, 25)), Calx.Chemistry.Elements.AtomicWeights.Iupac2024, 1);
        Assert.Equal(48, watch.Now(Group(Weighed, flameOut: 30), At(31), true).CoolEnoughAt);
    }

    [Fact]
    public void A_group_that_says_it_cools_is_taken_to_have_put_its_flame_out_then()
    {
        GroupNow now = Watch.Now(Group(Weighed, lit: 20, told: new ToldStep("cool", 33)), At(34), true);
        Assert.Equal(33 + 14.052, now.CoolEnoughAt!.Value, 3);
        Assert.Null(Watch.Now(Group(Weighed, lit: 20), At(34), true).CoolEnoughAt);
    }
}
