using Calx.Practicals.Definition;
using Calx.Practicals.Inference;

namespace Calx.Engine.Tests.Practicals.Inference;

/// <summary>Which answers follow from what a table has.</summary>
public sealed class AnswerReachTests
{
    private static readonly Practical Marble = BuiltInPracticals.Find("marble-and-acid")!;

    [Theory]
    [InlineData("rateStart")]
    [InlineData("timeHalf")]
    public void What_is_read_off_a_curve_needs_the_mass_from_the_first_to_the_last_point(string answer)
    {
        AnswerDefinition asked = Marble.Answers.First(a => a.Id == answer);
        Assert.True(new AnswerReach(Marble, ["start", "end"]).Gives(asked));
        Assert.True(new AnswerReach(Marble, ["lostColumn"]).Gives(asked));
        Assert.False(new AnswerReach(Marble, ["flask", "withAcid", "start"]).Gives(asked));
        Assert.Equal(["start", "end"], AnswerReach.ReadingsOf(asked, Marble));
    }

    [Fact]
    public void Other_answers_still_need_the_readings_of_their_formulas()
    {
        AnswerDefinition acid = Marble.Answers.First(a => a.Id == "massAcid");
        Assert.True(new AnswerReach(Marble, ["flask", "withAcid"]).Gives(acid));
        Assert.False(new AnswerReach(Marble, ["start", "end"]).Gives(acid));
    }
}
