using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>What a group is told to do, and what it is never told.</summary>
public sealed class AdviceTests
{
    /// <summary>Much lighter than it should be after one heating: most of the metal is still there.</summary>
    private const string HardlyBurnt = "empty=28.60@15 before=28.84@18 after=28.87@45";

    private const string Burnt = "empty=28.60@15 before=28.84@18 after=28.99@45 after2=28.99@62";

    [Theory]
    [InlineData("cracked")]
    [InlineData("burning-outside")]
    [InlineData("spill")]
    [InlineData("choking-smell")]
    [InlineData("injury")]
    public void A_stop_observation_comes_before_all_arithmetic_for_everybody(string observation)
    {
        Advice advice = Watch.AdviceFor(Group(HardlyBurnt, observations: [observation]), At(50));
        Assert.IsType<Advice.StopTellYourTeacher>(advice);
        Assert.Equal("Stop, stand back and tell your teacher now. The weighings can wait.", advice.ForStudent(assessed: true, hasDecided: false));
    }

    [Fact]
    public void Who_has_hardly_burnt_anything_heats_again_while_there_is_time_and_heatings_are_left()
    {
        Assert.IsType<Advice.Reheat>(Watch.AdviceFor(Group(HardlyBurnt), At(50, lastHeating: 70)));
        Advice late = Watch.AdviceFor(Group(HardlyBurnt), At(71, lastHeating: 70));
        Assert.Equal(NoMoreHeating.NoTime, Assert.IsType<Advice.StopHere>(late).Why);
        Advice often = Watch.AdviceFor(Group("empty=28.60@15 before=28.84@18 after=28.87@30 after2=28.88@40 after3=28.90@50"), At(55));
        Assert.Equal(NoMoreHeating.MostHeatings, Assert.IsType<Advice.StopHere>(often).Why);
    }

    [Fact]
    public void Who_has_burnt_it_all_and_weighed_twice_stops() =>
        Assert.IsType<Advice.ConstantMass>(Watch.AdviceFor(Group(Burnt), At(64)));

    [Fact]
    public void Two_steps_of_a_balance_above_half_the_change_that_is_due_tell_nothing() =>
        Assert.IsType<Advice.CannotTell>(Watch.AdviceFor(Group("empty=28.6@15 before=28.8@18 after=29.0@45", balance: new Balance(0.1)), At(50)));

    [Fact]
    public void Before_anything_is_weighed_there_is_nothing_to_decide() => Assert.IsType<Advice.NotYet>(Watch.AdviceFor(Group(""), At(20)));

    [Fact]
    public void Students_decide_first_and_in_an_assessed_lesson_they_are_told_nothing()
    {
        Advice advice = Watch.AdviceFor(Group(HardlyBurnt), At(50));
        Assert.Contains("Decide in your group", advice.ForStudent(assessed: false, hasDecided: false), StringComparison.Ordinal);
        Assert.StartsWith("Heat once more", advice.ForStudent(assessed: false, hasDecided: true), StringComparison.Ordinal);
        Assert.Null(advice.ForStudent(assessed: true, hasDecided: true));
    }

    public static TheoryData<string> Readings =>
    [
        HardlyBurnt, Burnt, "empty=28.60@15 before=28.84@18 after=28.70@45", "empty=28.60@15 before=28.84@18 after=29.90@45",
        "empty=28.60@15 before=28.84@18 after=28.93@45 after2=28.97@60", "empty=82.60@15 before=28.84@18 after=28.98@45",
    ];

    [Theory]
    [MemberData(nameof(Readings))]
    public void What_students_read_holds_no_digit_cause_or_accepted_value(string readings)
    {
        foreach (double now in (double[])[50, 71])
        {
            Advice advice = Watch.AdviceFor(Group(readings), At(now));
            foreach (bool decided in (bool[])[false, true])
            {
                string text = advice.ForStudent(assessed: false, decided) ?? "";
                Assert.DoesNotContain(text, char.IsAsciiDigit);
                Assert.All(Magnesium.Faults, f => Assert.DoesNotContain(f.Label, text, StringComparison.OrdinalIgnoreCase));
                Assert.DoesNotContain("MgO", text, StringComparison.Ordinal);
            }
        }
    }
}
