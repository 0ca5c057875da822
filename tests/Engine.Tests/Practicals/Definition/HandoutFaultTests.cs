using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>What stands on paper: faults of a file where they stand, and what it says.</summary>
public sealed class HandoutFaultTests
{
    private const string Conserved = "{ id: conserved, about: conclusion, needs: [before, after],";

    [Theory]
    [InlineData("Put {sample} of magnesium", "Put {mass} of magnesium", "{ at: [weigh-before]", "'{mass}' is put in nowhere; expected {sample} for the mass of the sample or {cooling} for the minutes of cooling")]
    [InlineData("sheet:\n", "sheet:\n  account:\n    - { say: 'let it cool for {cooling} minutes' }\n", "{ say: 'let it cool", "'{cooling}' is put in nowhere; expected {sample} for the mass of the sample")]
    [InlineData("Put {sample} of magnesium", "Put {sample of magnesium", "{ at: [weigh-before]", "is put in nowhere")]
    [InlineData("{ at: [weigh-before]", "{ at: [weigh-befor]", "weigh-befor]", "did you mean weigh-before?")]
    [InlineData(Conserved, "{ id: conserved, about: chemistry, needs: [before, after],", "chemistry", "expected conclusion, evaluation")]
    [InlineData(Conserved, "{ id: what-happened, about: conclusion, needs: [before, after],", "what-happened, about: conclusion, needs: [before, after], ask: 'A friend", "the question 'what-happened' is there already")]
    [InlineData(Conserved, "{ id: conserved, about: conclusion, needs: [before, afterwards],", "afterwards]", "there is no reading 'afterwards'")]
    [InlineData(Conserved, "{ id: conserved, about: conclusion, needs: [before, after4],", "after4]", "'after' is weighed 3 times at most, so there is no 'after4'; expected after, or after2 up to after3")]
    [InlineData(Conserved, "{ id: conserved, about: conclusion, needs: [before2, after],", "before2, after]", "'before' is weighed once, so there is no 'before2'; expected before")]
    [InlineData("minutesPerGroup: 1, saves: clean,", "minutesPerGroup: -1, saves: clean,", "-1, saves", "expected a number from 0")]
    [InlineData("minutesPerGroup: 1, saves: clean,", "minutesPerGroup: 1, saves: clean-it,", "clean-it,", "there is no step 'clean-it'")]
    [InlineData("noticeInHours: 48", "notice: 48", "notice: 48", "'notice' is no key of what the technician is told; expected")]
    [InlineData("signal: danger, classes: [Flam. Sol. 1,", "signal: dangerous, classes: [Flam. Sol. 1,", "dangerous,", "expected none, warning, danger")]
    [InlineData("codes: [H228, H261]", "codes: [H28, H261]", "{ signal: danger", "'H28' is no code of a hazard statement; expected H and three digits, such as H318")]
    [InlineData("signal: danger, classes: [Flam. Sol. 1, Water-react. 2],", "signal: danger,", "{ signal: danger", "a substance with hazard statements has classes and a signal word")]
    [InlineData("  - { when: a burn, do: ", "  - { when: a burn, act: ", "act: 'cool", "'act' is no key of what is done in an emergency; expected when, do, standing, source")]
    public void A_fault_is_named_where_it_stands(string from, string to, string marker, string reason) =>
        Files.AssertFault(Files.Magnesium, from, to, marker, reason);

    [Fact]
    public void A_question_without_what_is_expected_cannot_be_marked() => Files.AssertFault(
        Files.Magnesium, ", expected: ['the mass of magnesium and of the oxygen used together is the mass of the oxide: nothing was made']", "", Conserved, "a question lacks the key 'expected'");

    [Fact]
    public void A_question_about_two_weighings_is_asked_where_the_plan_comes_to_them()
    {
        var plan = new PlanSettings(BuiltInPracticals.Find(Files.Magnesium)!, 12, [new Balance(0.01)], 60);
        Assert.Contains(plan.Questions, q => q.Id == "all-burnt");
        Assert.DoesNotContain(plan.WithHeatings(1).Questions, q => q.Id == "all-burnt");
        Assert.Equal(plan.Questions.Count - 1, plan.WithHeatings(1).Questions.Count);
        // Whatever is expected to speak of the last two weighings needs them.
        Assert.All(BuiltInPracticals.All.SelectMany(p => p.Sheet.Questions).Where(q => q.Expected.Any(e => e.Contains("last two weighings", StringComparison.Ordinal))), q => Assert.Equal(2, q.Rounds));
    }

    [Fact]
    public void A_file_may_say_nothing_of_paper()
    {
        string text = Files.Text(Files.Magnesium);
        PracticalReading reading = PracticalReader.Read(text[..text.IndexOf("\nsheet:", StringComparison.Ordinal)], "f.yaml");
        Assert.Empty(reading.Faults);
        Assert.Empty(reading.Practical!.Sheet.Steps);
        Assert.Empty(reading.Practical.Technician.Prepare);
    }

    [Fact]
    public void Every_practical_tells_each_of_its_steps_with_a_reading_a_flame_or_cooling()
    {
        foreach (Practical practical in BuiltInPracticals.All)
        {
            string[] told = [.. practical.Sheet.Steps.SelectMany(s => s.Steps)];
            Assert.All(practical.Steps.Where(s => s.Reading is not null || s.Kit.Count > 0 || s.Id.StartsWith("cool", StringComparison.Ordinal)), s => Assert.Contains(s.Id, told));
            Assert.All(practical.Sheet.Questions, q => Assert.InRange(q.Lines, 1, 6));
            Assert.NotEmpty(practical.Technician.Prepare);
        }
    }
}
