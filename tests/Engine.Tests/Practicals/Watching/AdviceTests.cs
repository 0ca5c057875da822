using System.Text.RegularExpressions;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;
using static Calx.Engine.Tests.Practicals.Watching.Bench;

namespace Calx.Engine.Tests.Practicals.Watching;

/// <summary>What a group is told to do, and what it is never told.</summary>
public sealed class AdviceTests
{
    /// <summary>0.24 g should gain 0.158 g; after two heatings 0.09 g have come, and the last brought 0.04 g.</summary>
    private const string StillRising = "empty=28.60@15 before=28.84@18 after=28.89@45 after2=28.93@62";

    private const string Constant = "empty=28.60@15 before=28.84@18 after=28.99@45 after2=29.00@62";

    [Fact]
    public void A_mass_that_still_rises_far_below_its_end_is_heated_again()
    {
        Advice advice = Watch.AdviceFor(Group(StillRising), At(63));
        Assert.Equal("reheat", advice.Word);
        Assert.Contains("not all of the magnesium had burnt", advice.ForTeacher, StringComparison.Ordinal);
        Assert.StartsWith("Heat once more", advice.ForStudent(assessed: false, hasDecided: true), StringComparison.Ordinal);
    }

    // 51.74 after 15.34: a second cause may be at work too, and takes nothing from the certainty of the slip.
    [Fact]
    public void A_reading_that_nothing_but_a_slip_explains_is_said_not_to_be_possible()
    {
        Advice advice = Watch.AdviceFor(Group("empty=15.10@15 before=15.34@18 after=51.74@45"), At(46));
        Assert.StartsWith(
            "This reading cannot be: 51.74 g as 'Mass after heating', beside the others. Almost certainly this (over 99 %): a reading was misread or miscopied.",
            advice.ForTeacher,
            StringComparison.Ordinal);
        Assert.True(Assert.IsType<Advice.CheckReading>(advice).CannotBe);
    }

    [Fact]
    public void The_full_gain_twice_is_constant_mass()
    {
        Assert.Equal("constant-mass", Watch.AdviceFor(Group(Constant), At(63)).Word);
    }

    [Fact]
    public void After_the_last_call_nobody_is_told_to_heat_again_and_the_result_says_what_may_be_left()
    {
        Advice advice = Watch.AdviceFor(Group(StillRising), At(71, lastHeating: 70));
        Advice.StopHere stop = Assert.IsType<Advice.StopHere>(advice);
        Assert.Equal((NoMoreHeating.NoTime, "stop-here"), (stop.Why, stop.Word));
        Assert.Contains("last heating starts by minute 70", advice.ForTeacher, StringComparison.Ordinal);
        Assert.Matches(@"at most \d+ % can still be unreacted \(95 %\)", advice.ForTeacher);
        // At the very minute it may still begin.
        Assert.Equal("reheat", Watch.AdviceFor(Group(StillRising), At(70, lastHeating: 70)).Word);
    }

    [Fact]
    public void Beyond_the_most_heatings_nobody_is_told_to_heat_again()
    {
        Advice.StopHere stop = Assert.IsType<Advice.StopHere>(
            Watch.AdviceFor(Group("empty=28.60 before=28.84 after=28.87 after2=28.89 after3=28.92"), At(63)));
        Assert.Equal(NoMoreHeating.MostHeatings, stop.Why);
    }

    [Fact]
    public void A_heating_for_the_teacher_alone_is_never_a_students()
    {
        string text = Magnesium.SourceText.Replace(
            "{ id: reheat, label: reheat, minutes: [3, 5, 7], kit: { burner: 1 }",
            "{ id: reheat, label: reheat, minutes: [3, 5, 7], kit: { burner: 1, teacher: 1 }",
            StringComparison.Ordinal);
        Practical practical = PracticalReader.Read(text, "teacher.yaml").Practical!;
        var watch = new LessonWatch(new PlanSettings(practical, 12, [Centigram], 100), AtomicWeights.Iupac2024, 1);
        Advice.StopHere stop = Assert.IsType<Advice.StopHere>(watch.AdviceFor(Group(StillRising), At(63)));
        Assert.Equal(NoMoreHeating.TeacherOnly, stop.Why);
        Assert.DoesNotContain("eat once more", stop.ForStudent(false, true), StringComparison.Ordinal);
    }

    [Fact]
    public void What_comes_before_all_arithmetic_comes_first_and_is_said_to_students_at_once()
    {
        Advice advice = Watch.AdviceFor(Group(StillRising, observations: ["cracked"]), At(63));
        Assert.Equal("stop-tell-your-teacher", advice.Word);
        foreach (bool assessed in (bool[])[true, false])
        {
            Assert.StartsWith("Stop, stand back and tell your teacher now.", advice.ForStudent(assessed, hasDecided: false), StringComparison.Ordinal);
        }

        // Before anything is weighed, and for a group that lost its sample, too.
        Assert.IsType<Advice.StopTellYourTeacher>(Watch.AdviceFor(Group("", observations: ["injury"]), At(20)));
        Assert.IsType<Advice.StopTellYourTeacher>(
            Watch.AdviceFor(Group("", observations: ["spill"], condition: new GroupCondition.Simulated()), At(20)));
    }

    [Theory]
    [InlineData("cracked")]
    [InlineData("burning-outside")]
    [InlineData("spill")]
    [InlineData("choking-smell")]
    [InlineData("injury")]
    public void Every_observation_of_danger_is_one(string observation) =>
        Assert.IsType<Advice.StopTellYourTeacher>(Watch.AdviceFor(Group(StillRising, observations: [observation]), At(63)));

    [Fact]
    public void Two_steps_of_a_balance_above_half_the_change_that_is_due_tell_nothing() => Assert.IsType<Advice.CannotTell>(
        Watch.AdviceFor(Group("empty=28.6@15 before=28.8@18 after=29.0@45", balance: new Balance(0.1)), At(50)));

    [Fact]
    public void Students_decide_first_and_hear_nothing_in_an_assessed_lesson()
    {
        Advice advice = Watch.AdviceFor(Group(StillRising), At(63));
        Assert.Contains("Decide in your group", advice.ForStudent(assessed: false, hasDecided: false), StringComparison.Ordinal);
        Assert.Null(advice.ForStudent(assessed: true, hasDecided: true));
        Assert.Null(advice.ForStudent(assessed: true, hasDecided: false));
    }

    [Fact]
    public void A_whole_gram_too_much_is_to_be_looked_at_again_and_only_the_teacher_reads_the_digits()
    {
        Advice advice = Watch.AdviceFor(Group("empty=28.60 before=28.84 after=29.99"), At(63));
        Advice.CheckReading check = Assert.IsType<Advice.CheckReading>(advice);
        Assert.Equal("after", check.WeighingId);
        Assert.Contains("28.99", advice.ForTeacher, StringComparison.Ordinal);
        Assert.Equal("Your balance shows two decimals. Look again and type all you see.", advice.ForStudent(false, hasDecided: false));
    }

    [Fact]
    public void Minutes_of_cooling_that_are_known_count_as_evidence_of_warmth()
    {
        // 0.04 g less than before: weighed 3 min after the flame was out it was surely warm; after 40 min hardly.
        const string readings = "empty=28.60@15 before=28.84@18 after=28.98@45 after2=28.94@62";
        Advice hot = Watch.AdviceFor(Group(readings, flameOut: 59), At(63));
        Advice cold = Watch.AdviceFor(Group(readings, flameOut: 22), At(63));
        Assert.Equal("cool-and-reweigh", hot.Word);
        Assert.True(Warm(cold) < Warm(hot) / 2);

        static double Warm(Advice advice) => advice.Diagnosis!.Causes.First(c => c.Cause == "weighed-warm").Present;
    }

    [Fact]
    public void A_group_that_has_gone_on_is_told_nothing_until_it_weighs_again()
    {
        Assert.Equal("not-yet", Watch.AdviceFor(Group(StillRising, lit: 63), At(64)).Word);
        Assert.Equal("not-yet", Watch.AdviceFor(Group("empty=28.60@15 before=28.84@18"), At(20)).Word);
        Assert.Equal("not-yet", Watch.AdviceFor(Group(""), At(20)).Word);
    }

    [Fact]
    public void The_classs_own_amount_is_taken_where_the_class_shows_it()
    {
        // Half of the plan's sample: by itself it looks odd, among others that took as much it does not.
        GroupAtWork group = Group("empty=28.60 before=28.72 after=28.80 after2=28.80");
        GroupReadings[] others = [.. Enumerable.Range(0, 6).Select(_ => Group("empty=25.60 before=25.72 after=25.80 after2=25.80").Readings)];
        double alone = Watch.AdviceFor(group, At(63)).Diagnosis!.Causes.First(c => c.Cause == "as-expected").Probability;
        double among = Watch.AdviceFor(group, At(63), others).Diagnosis!.Causes.First(c => c.Cause == "as-expected").Probability;
        Assert.True(among > alone);
    }

    /// <summary>Whatever a drawn group weighed, its students never read a digit, the name of a cause or an accepted value, and are
    /// never told to heat when they may not.</summary>
    [Fact]
    public void No_student_ever_reads_digits_or_causes()
    {
        string[] causes = [.. Magnesium.Faults.SelectMany(f => new[] { f.Label, f.Cause }), "misread", "unreacted", "MgO"];
        SimulatedClass drawn = SimulatedClass.Draw(
            new Circumstances(Magnesium, Plan.AllConditions), AtomicWeights.Iupac2024, new SimulationPlan(60), seed: 9, cancellation: TestContext.Current.CancellationToken);
        foreach (SimulatedGroup one in drawn.Groups)
        {
            var taken = one.Readings.Select(r => new TakenReading(r.Weighing.Reading, r.Weighing.Occurrence, r.Written)).ToArray();
            var group = new GroupAtWork(1, 1, Centigram, new GroupReadings("G1", null, taken, remarks: new GroupRemarks(observations: one.Observations)));
            Advice advice = Watch.AdviceFor(group, At(71, lastHeating: 70));
            Assert.NotEqual("reheat", advice.Word);
            foreach (bool decided in (bool[])[true, false])
            {
                string said = advice.ForStudent(false, decided) ?? string.Empty;
                Assert.DoesNotMatch(@"\d", said);
                Assert.DoesNotContain(causes, c => Regex.IsMatch(said, $@"\b{Regex.Escape(c)}\b", RegexOptions.IgnoreCase));
            }
        }
    }
}
