using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>What helps to tell causes apart, as the shipped files say it and as other files may.</summary>
public sealed class AdviceTests
{
    /// <summary>Signs that end a group's work whatever its readings are (common practice, no source).</summary>
    private static readonly string[] Stops = ["cracked", "burning-outside", "spill", "choking-smell", "injury"];

    /// <summary>Words for what no student does with a hot vessel or its residue (common practice, no source).</summary>
    private static readonly string[] Never = ["smell", "taste", "touch", "feel", "finger", "hand", "acid", "water"];

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Signs_of_danger_stop_a_group_and_weigh_nothing_in_the_arithmetic(string id)
    {
        IReadOnlyList<Observation> all = BuiltInPracticals.Find(id)!.Observations;
        Assert.Contains(all, o => o.Id == "injury");
        Assert.True(all.Count(o => o.Stop) >= 2, "one sign of danger besides an injury at least");
        foreach (Observation sign in all.Where(o => Stops.Contains(o.Id)))
        {
            Assert.True(sign.Stop, sign.Id);
            Assert.Empty(sign.Likelihood);
            Assert.Equal(0, sign.Otherwise);
            Assert.Equal(Standing.CommonPractice, sign.Standing);
        }
    }

    [Fact]
    public void A_darkened_powder_stops_a_group_and_still_speaks_for_overheating()
    {
        Observation dark = BuiltInPracticals.Find("copper-sulfate-hydrate")!.Observations.Single(o => o.Id == "turned-dark");
        Assert.True(dark.Stop);
        Assert.True(dark.Likelihood["overheated"] > dark.Otherwise);
        Assert.Contains("grey powder", dark.Aliases);
    }

    [Fact]
    public void The_smell_of_ammonia_is_for_the_teacher_alone()
    {
        IReadOnlyList<Observation> all = BuiltInPracticals.Find(Files.Magnesium)!.Observations;
        Assert.Equal(["ammonia-smell"], all.Where(o => o.TeacherOnly).Select(o => o.Id));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Nobody_is_sent_to_smell_touch_or_wet_what_was_hot(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        ActionDefinition[] everybody = [.. practical.Actions.Where(a => !a.TeacherOnly)];
        IEnumerable<string> said = everybody.Select(a => a.Label)
            .Concat(practical.Observations.Where(o => everybody.Any(a => a.Observation == o.Id)).Select(o => o.Label));
        string[] words = [.. said.SelectMany(label => label.Split(' ', ',', '.'))];
        Assert.NotEmpty(words);
        // Drops of water may be looked for, and a bath of water dries: none is put on anything.
        Assert.Empty(words.Intersect(Never).Except(said.Any(l => l.Contains("drops", StringComparison.Ordinal) || l.Contains("water bath", StringComparison.Ordinal)) ? ["water"] : []));
        Assert.DoesNotContain(practical.Observations, o => o.Label.Contains("warm", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_word_for_an_observation_means_one_of_them(string id)
    {
        string[] words = [.. BuiltInPracticals.Find(id)!.Observations
            .SelectMany(o => o.Aliases.Append(o.Id).Append(o.Label)).Select(w => w.ToUpperInvariant())];
        Assert.Equal(words.Distinct(), words);
    }

    /// <summary>One set of times: a round is what the lesson's own steps take, to the next whole minute.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void A_reheat_takes_the_minutes_of_heating_cooling_and_weighing(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        double likely = practical.Steps.Where(s => s.Place.Round is StepRound.Again or StepRound.Each && s.Place.Freedom.During is null).Sum(s => s.Minutes.Likely);
        ActionDefinition[] reheats = [.. practical.Actions.Where(a => a.Kind == ActionKind.Reheat)];
        Assert.Equal(practical.Procedure.Any(e => e is RepeatEvent { Until: StopRule.ConstantMass }), reheats.Length == 1);
        Assert.All(reheats, reheat => Assert.Equal(Math.Ceiling(likely), reheat.Minutes));
    }

    [Fact]
    public void Each_kind_of_action_of_the_magnesium_is_read_with_what_it_needs()
    {
        IReadOnlyList<ActionDefinition> actions = BuiltInPracticals.Find(Files.Magnesium)!.Actions;
        Assert.Equal(Enum.GetValues<ActionKind>(), actions.Select(a => a.Kind).Distinct());
        Assert.All(actions, a => Assert.Equal(a.Kind == ActionKind.WithoutPart ? "lid" : null, a.Part));
        Assert.All(actions, a => Assert.Equal(a.Kind == ActionKind.Look, a.Observation is not null));
        Assert.All(actions, a => Assert.False(a.TeacherOnly));
    }

    [Theory]
    [InlineData("magnesium-oxide", 0.10)]
    [InlineData("copper-sulfate-hydrate", 0.15)]
    [InlineData("sodium-hydrogencarbonate", 0.010)]
    public void What_counts_and_what_a_spoiled_answer_is_worth_are_read(string id, double matters)
    {
        FindingsDefinition findings = BuiltInPracticals.Find(id)!.Findings;
        Assert.Equal((matters, 60), (findings.Decision!.Matters, findings.Decision.WorthMinutes));
        Assert.Equal((2, 0.05), (findings.AsExpected!.Divisions, findings.AsExpected.Share));
        Assert.Equal((Standing.Judgement, Standing.Judgement), (findings.Decision.Standing, findings.AsExpected.Standing));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_careful_class_has_fewer_faults_of_every_kind_it_names(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        ConditionDefinition? careful = practical.Conditions.SingleOrDefault(c => c.Id == "careful");
        if (careful is null)
        {
            // What a teacher shows has no careful class.
            Assert.Contains(practical.Steps, s => s.Reading is not null && s.Kit.ContainsKey("teacher"));
            return;
        }

        Assert.NotEmpty(careful.Rates);
        Assert.All(careful.Rates, rate => Assert.True(rate.Value < practical.Faults.Single(f => f.Cause == rate.Key).Rate, rate.Key));
    }

    [Fact]
    public void A_condition_sets_rates_laws_or_both()
    {
        string text = Files.Changed(
            Files.Magnesium, "rates: { damp-vessel: 0.01 }", "rates: { damp-vessel: 0.01, misread: 0 }, set: { sample: { normal: [0.10, 0.02] } }");
        ConditionDefinition fired = PracticalReader.Read(text, "f.yaml").Practical!.Conditions.Single(c => c.Id == "fired");
        Assert.Equal(new Dictionary<string, double> { ["damp-vessel"] = 0.01, ["misread"] = 0 }, fired.Rates);
        ParameterSetting setting = Assert.Single(fired.Settings);
        Assert.Equal(("sample", new ParameterLaw.Normal(0.10, 0.02)), (setting.Parameter, setting.Law));
    }

    /// <summary>Warmth that falls to a tenth every 10 min, by hand: 100 K, 10 K, 1 K, and 10^1.5 K = 31.623 K half-way
    /// to the first of them.</summary>
    [Theory]
    [InlineData(0, 100)]
    [InlineData(5, 31.623)]
    [InlineData(10, 10)]
    [InlineData(15, 3.1623)]
    [InlineData(20, 1)]
    [InlineData(30, 0.1)]
    public void Warmth_falls_by_the_same_factor_in_the_same_time(double minutes, double kelvin)
    {
        string text = Files.Changed(
            Files.Magnesium, "[[6, 78], [9.3, 38], [13, 20], [17, 10], [21, 5], [26, 2.6]]", "[[0, 100], [10, 10], [20, 1]]");
        CoolingDefinition cooling = PracticalReader.Read(text, "f.yaml").Practical!.Cooling!;
        Assert.Equal(kelvin, cooling.ExcessInKelvinAfter(minutes), 0.0001 * kelvin);
    }

    [Theory]
    [InlineData("magnesium-oxide", 6, 26)]
    [InlineData("copper-sulfate-hydrate", 3.3, 14.5)]
    [InlineData("sodium-hydrogencarbonate", 6, 26)]
    public void Cooling_is_told_from_too_hot_to_weigh_until_the_milligrams_no_longer_show_it(string id, double first, double last)
    {
        CoolingDefinition cooling = BuiltInPracticals.Find(id)!.Cooling!;
        Assert.Equal("after", cooling.Reading);
        Assert.Equal(new CoolingPoint(first, 78), cooling.Points[0]);
        Assert.Equal(new CoolingPoint(last, 2.6), cooling.Points[^1]);
        Assert.Equal((0.3, Standing.Computed), (cooling.RelativeSpread, cooling.Standing));
    }

    [Fact]
    public void Slips_of_the_pen_have_four_kinds_and_a_shifted_zero_befalls_any_weighing()
    {
        IReadOnlyList<FaultDefinition> faults = BuiltInPracticals.Find(Files.Magnesium)!.Faults;
        Assert.Equal(new FaultEffect.Pen(0.35, 0.25, 0.25, 0.15), faults.Single(f => f.Cause == "misread").Effect);
        Assert.Null(Assert.IsType<FaultEffect.Zero>(faults.Single(f => f.Cause == "zero-shifted").Effect).Reading);
    }

    [Fact]
    public void Three_kinds_of_slips_and_the_zero_of_one_reading_may_be_told_as_well()
    {
        string text = Files.Changed(Files.Magnesium, "swapped: 0.35, wrongDigit: 0.25, wholeGram: 0.25, droppedZero: 0.15", "swapped: 0.5, wrongDigit: 0.25, wholeGram: 0.25")
            .Replace("zero: { shift:", "zero: { reading: before, shift:", StringComparison.Ordinal);
        IReadOnlyList<FaultDefinition> faults = PracticalReader.Read(text, "f.yaml").Practical!.Faults;
        Assert.Equal(new FaultEffect.Pen(0.5, 0.25, 0.25, 0), faults.Single(f => f.Cause == "misread").Effect);
        Assert.Equal("before", Assert.IsType<FaultEffect.Zero>(faults.Single(f => f.Cause == "zero-shifted").Effect).Reading);
    }

    [Fact]
    public void A_practical_may_do_without_all_of_it()
    {
        string text = Files.Text(Files.Magnesium);
        int start = text.IndexOf("\nactions:", StringComparison.Ordinal);
        int end = text.IndexOf("\nsteps:", StringComparison.Ordinal);
        text = (text[..start] + text[end..])
            .Replace("  asExpected:", "  #asExpected:", StringComparison.Ordinal)
            .Replace("  decision:", "  #decision:", StringComparison.Ordinal)
            .Replace(", gives: fired", "", StringComparison.Ordinal)
            .Replace(", gives: cleaned-ribbon", "", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text, "f.yaml");
        Assert.Empty(reading.Faults);
        Practical bare = reading.Practical!;
        Assert.Equal((0, 0, null), (bare.Actions.Count, bare.Conditions.Count, bare.Cooling));
        Assert.Equal((null, null), (bare.Findings.AsExpected, bare.Findings.Decision));
    }
}
