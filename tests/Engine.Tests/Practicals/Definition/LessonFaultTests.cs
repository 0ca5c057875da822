using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>What a plan needs of a file: its faults where they stand, and what it says.</summary>
public sealed class LessonFaultTests
{
    private const string Clean = "per: trial, prepared: true, gives: cleaned-ribbon, standing";
    private const string Ribbon = "perGroup: 0.24, unit: g, spareShare: 0.2, sample: true, cut: true";
    private const string Amounts = "amounts: { usual: 0.24, least: 0.05,";
    private const string Classroom = "classroom: { gasOff: 15, late: 0.1, lateBy: [1, 4, 10], newStart: [1, 2, 4]";
    private const string OneToOne = "chooses: { quantity: moleRatio, among: [0.5, 1, 2] }";

    [Theory]
    [InlineData(Clean, "per: trail, prepared: true, gives: cleaned-ribbon, standing", "trail", "'trail' is not understood; expected group, trial, class; did you mean trial?")]
    [InlineData(Clean, "per: trial, prepared: true, gives: cleaned-ribon, standing", "cleaned-ribon", "there is no condition 'cleaned-ribon'")]
    [InlineData(Clean, "per: trial, prepared: 1, gives: cleaned-ribbon, standing", "1, gives", "where true or false was expected")]
    [InlineData("kit: { burner: 1 }, round: again", "kit: { burner: 1 }, round: second", "second", "expected first, again, each")]
    [InlineData("kit: { burner: 1 }, round: again", "kit: { burner: 1 }, per: group, round: again", "group, round: again", "a step of a heating is done in each trial")]
    [InlineData("round: each, during: cool", "round: each, during: weigh-after", "weigh-after, standing", "there is no step 'weigh-after'")]
    [InlineData("alongside: cool", "alongside: coool", "coool", "did you mean cool?")]
    [InlineData("elsewhere: before", "elsewhere: sooner", "sooner", "expected before, after")]
    [InlineData("round: first, grows: 0.5", "round: first, grows: -1", "-1, standing", "expected a number from 0")]
    [InlineData("kit: { teacher: 1 }", "kit: { teachers: 1 }", "teachers: 1", "there is no piece of kit 'teachers'")]
    [InlineData(Ribbon, "unit: g, spareShare: 0.2, sample: true, cut: true", "{ id: ribbon", "lacks the key 'perGroup', 'perStudent' or 'perClass'")]
    [InlineData(Ribbon, "perGroup: 0.24, perClass: 3, unit: g", "{ id: ribbon", "one of 'perGroup', 'perClass', not several")]
    [InlineData(Ribbon, "perGroup: 24, unit: cm, sample: true", "{ id: ribbon", "is measured in g")]
    [InlineData("breaks: 0.08", "breaks: 8", "8 }\n  - { id: triangle", "expected a number from 0 to 1")]
    [InlineData("breaks: 0.04, startsAgain: true", "startsAgain: true", "{ id: crucible, label: 'crucible, 15", "said of a piece that never breaks")]
    [InlineData(Amounts, "amounts: { usual: 0.24, least: 0.5,", "{ usual: 0.24", "the amounts rise from 'least' over 'usual'")]
    [InlineData(Amounts, "amounts: { usual: 0.24,", "{ usual: 0.24", "the choice of amounts lacks the key 'least'")]
    [InlineData("grows: { not-all-reacted: 1,", "grows: { not-all-reactd: 1,", "not-all-reactd", "did you mean not-all-reacted?")]
    [InlineData(Classroom, "classroom: { gasOff: 15, late: 0.1, lateBy: [4, 1, 10], newStart: [1, 2, 4]", "[4, 1, 10]", "the times rise from the least")]
    [InlineData(Classroom, "classroom: { gasOff: 15, late: 2, lateBy: [1, 4, 10], newStart: [1, 2, 4]", "2, lateBy", "expected a number from 0 to 1")]
    [InlineData(Classroom, "classroom: { gasOff: 15, late: 0.1, lateBy: [1, 4], newStart: [1, 2, 4]", "[1, 4], new", "a list of 2 stands here; expected [least, likely, most]")]
    [InlineData("minutes: [2, 3, 5]", "minutes: [2, 3, 5000]", "[2, 3, 5000]", "longer than any step, which lasts 1000 at most")]
    [InlineData("test: { rises: massChange }", "test: { rises: massChang }", "massChang }", "did you mean massChange?")]
    [InlineData("test: { rises: massChange }", "test: { grows: massChange }", "grows: massChange", "'grows' is no kind of test of a conclusion")]
    [InlineData(OneToOne, "chooses: { quantity: moleRatio, among: [2, 1] }", "[2, 1]", "two numbers or more, rising")]
    [InlineData(OneToOne, "chooses: { quantity: moleRatio, among: [-1, 1] }", "-1, 1]", "expected a number above 0")]
    [InlineData("within: { quantity: moleRatio, share: 0.05 }", "within: { quantity: moleRatio, share: 5 }", "5 } }", "expected a number above 0 up to 1")]
    public void A_fault_is_named_where_it_stands(string from, string to, string marker, string reason) =>
        Files.AssertFault(Files.Magnesium, from, to, marker, reason);

    [Fact]
    public void A_file_may_say_nothing_of_amounts_and_classroom()
    {
        string text = Files.Text(Files.Magnesium)
            .Replace("\namounts:", "\n#amounts:", StringComparison.Ordinal).Replace("\nclassroom:", "\n#classroom:", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text, "f.yaml");
        Assert.Empty(reading.Faults);
        Assert.Null(reading.Practical!.Amounts);
        Assert.Equal((0.0, 0.1), (reading.Practical.Classroom.GasOffInMinutes, reading.Practical.Classroom.LateShare));
    }

    [Fact]
    public void Steps_kit_and_conclusions_say_what_they_are()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        StepPlace Place(string id) => practical.Steps.Single(s => s.Id == id).Place;
        Assert.Equal((StepPer.Class, StepPer.Group, StepPer.Trial, StepPer.Trial), (Place("brief").Per, Place("set-up").Per, Place("weigh-empty").Per, Place("burn").Per));
        Assert.Equal((StepRound.None, StepRound.First, StepRound.Again, StepRound.Each), (Place("clean").Round, Place("burn").Round, Place("reheat").Round, Place("cool").Round));
        Assert.Equal(("firing", "fired", true), (Place("fire-empty").Freedom.Optional, Place("fire-empty").Freedom.Gives, Place("fire-empty").Freedom.Prepared));
        Assert.Equal((OtherLesson.Before, OtherLesson.After), (Place("brief").Freedom.Elsewhere, Place("work-out").Freedom.Elsewhere));
        Assert.Equal(("cool", "cool", 0.5), (Place("write").Freedom.During, Place("clear-up").Freedom.Alongside, Place("burn").Grows));
        Assert.Equal((KitPer.Class, KitPer.Student), (practical.Kit.Single(k => k.Id == "sand").Need.Per, practical.Kit.Single(k => k.Id == "goggles").Need.Per));
        var chooses = Assert.IsType<ConclusionTest.Chooses>(practical.Conclusions[1].Test);
        Assert.Equal([0.5, 1, 2], chooses.Among);
        Assert.True(practical.Conclusions[2].IsOptional);
    }

    [Fact]
    public void More_of_the_sample_brings_more_of_the_faults_that_grow_with_it()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        var usual = new Circumstances(practical);
        int unburnt = practical.Faults.ToList().FindIndex(f => f.Cause == "not-all-reacted");
        int smoke = practical.Faults.ToList().FindIndex(f => f.Cause == "product-lost");
        int damp = practical.Faults.ToList().FindIndex(f => f.Cause == "damp-vessel");
        Circumstances half = usual.ForSample(0.12);
        Assert.Equal(usual.RateOf(unburnt) / 2, half.RateOf(unburnt), 12);
        Assert.Equal(usual.RateOf(smoke) / Math.Sqrt(2), half.RateOf(smoke), 12);
        Assert.Equal(usual.RateOf(damp), half.RateOf(damp));
        Assert.Equal(Circumstances.MostOften, usual.ForSample(24).RateOf(unburnt));
        Assert.Equal(usual.RateOf(unburnt), usual.ForSample(0.24).RateOf(unburnt), 12);
    }
}
