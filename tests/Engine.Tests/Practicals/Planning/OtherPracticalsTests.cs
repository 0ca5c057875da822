using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;

namespace Calx.Engine.Tests.Practicals.Planning;

/// <summary>Practicals that are not heated to constant mass, say nothing of amounts, or share other things.</summary>
public sealed class OtherPracticalsTests
{
    private static readonly PlanOptions Quick = new(lessons: 200);

    private static Practical Changed(params (string From, string To)[] changes)
    {
        string text = Given.Magnesium.SourceText;
        foreach ((string from, string to) in changes)
        {
            Assert.Contains(from, text, StringComparison.Ordinal);
            text = text.Replace(from, to, StringComparison.Ordinal);
        }

        PracticalReading reading = PracticalReader.Read(text, "changed.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }

    [Fact]
    public void Without_amounts_in_the_file_only_the_usual_one_is_looked_at()
    {
        Practical practical = Changed(("\namounts: {", "\n#amounts: {"));
        Plan plan = Plan.Of(new PlanSettings(practical, 12, Given.Balances(2), 150), Given.Weights, Quick);
        Assert.Empty(plan.Amounts.Curve);
        Assert.Null(plan.Amounts.Smallest);
        Assert.True(plan.Amounts.Planned.ClassRight > 0.9);
        Assert.Contains("The practical's file does not say which amounts may be tried.", plan.Sentences);
    }

    [Fact]
    public void A_mass_that_is_said_to_stay_and_does_not_leads_the_class_to_say_so()
    {
        Practical practical = Changed(
            ("expect: rises ", "expect: same "), ("test: { rises: massChange }", "test: { stays: massChange }"));
        Plan plan = Plan.Of(new PlanSettings(practical, 12, Given.Balances(2), 150), Given.Weights, Quick);
        var gains = plan.Amounts.Planned.Chances.Single(c => c.Conclusion.Id == "gains");
        // The oxygen of 0.24 g is 0.16 g, eight times the two divisions: nearly every group and every class sees that it does not stay.
        Assert.True(gains.GroupWrong.Value > 0.9 && gains.ClassWrong.Value > 0.9, $"{gains}");
        Assert.True(gains.ClassRight.Value < 0.02);
    }

    [Fact]
    public void A_practical_that_heats_once_has_no_reheat_to_plan()
    {
        string text = Given.Magnesium.SourceText;
        int repeat = text.IndexOf("  - repeat:\n", StringComparison.Ordinal);
        int body = text.IndexOf("        - dry:", repeat, StringComparison.Ordinal);
        int end = text.IndexOf("\n\n", body, StringComparison.Ordinal);
        string once = text[body..end].Replace("        ", "  ", StringComparison.Ordinal);
        text = (text[..repeat] + once + text[end..])
            .Replace("    repeats: 3\n", "", StringComparison.Ordinal)
            .Replace("    repeatLabel: Mass after reheating\n", "", StringComparison.Ordinal)
            .Replace("needs: [after2]", "needs: [after]", StringComparison.Ordinal)
            .Replace("  constantMass:", "  #constantMass:", StringComparison.Ordinal)
            .Replace("  - { id: complete,", "  #- { id: complete,", StringComparison.Ordinal)
            .Replace("  - { id: reheat-and-weigh", "  #- { id: reheat-and-weigh", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text, "once.yaml");
        Assert.Empty(reading.Faults);
        var settings = new PlanSettings(reading.Practical!, 12, Given.Balances(2), 75);
        Assert.Equal(1, settings.Heatings);
        Plan plan = Plan.Of(settings, Given.Weights, Quick);
        Assert.Equal(["empty", "before", "after"], plan.ExpectedReadings.Select(r => r.Weighing.Id));
        Assert.Null(plan.Lesson.Calls.Reheat);
        Assert.DoesNotContain(plan.Ways!, w => w.Ids.Contains("one-heating"));
        Assert.DoesNotContain(plan.Amounts.Changes, c => c.Id.EndsWith("heating", StringComparison.Ordinal));
    }

    [Fact]
    public void A_fume_cupboard_that_the_class_shares_is_waited_for()
    {
        Practical practical = Changed(
            ("  - { id: sand,", "  - { id: fume-cupboard, label: place in the fume cupboard, perClass: 2 }\n  - { id: sand,"),
            ("minutes: [5, 10, 20], kit: { burner: 1 }", "minutes: [5, 10, 20], kit: { burner: 1, fume-cupboard: 1 }"));
        Plan plan = Plan.Of(new PlanSettings(practical, 12, Given.Balances(2), 150), Given.Weights, new PlanOptions(lessons: 200, looksForWays: false));
        ThingUse cupboard = plan.Lesson.Uses.Single(u => u.Thing.Id == "fume-cupboard");
        // Twelve burns of eleven minutes, two at a time, are an hour and more.
        Assert.Equal((2, true), (cupboard.Thing.Units, cupboard.MeanWait > 15));
        Assert.Equal("fume-cupboard", plan.Lesson.Bottleneck.Id);
        Assert.Contains("place in the fume cupboard", plan.Lesson.Bottleneck.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("copper-sulfate-hydrate")]
    [InlineData("sodium-hydrogencarbonate")]
    public void The_other_built_in_practicals_can_be_planned_with_every_option(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        PlanSettings settings = new PlanSettings(practical, 10, Given.Balances(2), 90)
            .WithTrials(2).WithHeatings(3).WithPrepared(true).WithMoved("brief").WithMoved("work-out").WithAlongside("clear-up").WithStagger(4)
            .WithConditions(["careful"]).WithTime("cool", new StepMinutes(5, 6, 9)).WithKit("burner", 6);
        Plan plan = Plan.Of(settings, Given.Weights, new PlanOptions(lessons: 200, looksForWays: false, wanted: [.. practical.Conclusions.Select(c => c.Id)]));
        Assert.Equal(3, plan.Amounts.Planned.Chances.Count);
        Assert.Equal(3, plan.Lesson.MeanHeatings, 0.15);
        Assert.Contains(plan.Lesson.Uses, u => u.Thing.Id == "burner");
        Assert.DoesNotContain(plan.Lesson.Typical.Bars, b => b.StepId is "brief" or "fire-empty" or "work-out");
    }
}
