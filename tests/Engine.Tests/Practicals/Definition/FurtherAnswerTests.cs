using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Definition;

/// <summary>What a file may ask beyond the sheet.</summary>
public class FurtherAnswerTests
{
    [Fact]
    public void Every_kind_is_read_in_the_order_of_the_file()
    {
        Practical practical = BuiltInPracticals.Find(Files.Magnesium)!;

        Assert.Equal(["percentOxygen", "yield", "formula", "complete", "oddGroup", "cause", "improvement"], practical.FurtherAnswers.Select(a => a.Id));
        Assert.Equal([.. practical.Answers, .. practical.FurtherAnswers], practical.AllAnswers);
        var formula = Assert.IsType<JudgementAnswer.OfFormula>(practical.FurtherAnswers[2]);
        Assert.Equal(("ratio", "Mg", "O", "MgO", 2), (formula.Ratio.Id, $"{formula.First}", $"{formula.Second}", $"{formula.Accepted}", formula.Simple));
        Assert.Equal("after", Assert.IsType<JudgementAnswer.OfCompleteness>(practical.FurtherAnswers[3]).Rule!.Reading);
        Assert.Equal("ratio", Assert.IsType<JudgementAnswer.OfCause>(practical.FurtherAnswers[5]).Value.Id);
        Assert.Equal("cause", Assert.IsType<JudgementAnswer.OfImprovement>(practical.FurtherAnswers[6]).Cause.Id);
    }

    [Theory]
    [InlineData("kind: odd-group", "kind: odd", "odd,", "'odd' is not understood")]
    [InlineData("ratio: ratio, first", "ratio: formula, first", "formula, first", "there is no answer 'formula'")]
    [InlineData("value: ratio, marks", "value: complete, marks", "complete, marks", "'complete' is no value")]
    [InlineData("for: cause", "for: ratio", "ratio, marks: 1 }\n\n#", "'ratio' is no answer of the kind cause")]
    [InlineData("second: O, accepted: MgO, simple", "second: O, accepted: H2O, simple", "{ id: formula, kind", "the accepted formula is not one of the elements")]
    [InlineData("first: Mg, second", "first: Mq, second", "Mq, second", "no element Mq")]
    [InlineData("{ id: oddGroup, kind", "{ id: ratio, kind", "ratio, kind: odd", "is there already")]
    [InlineData("ask: What would work against that cause?, for", "for", "{ id: improvement", "lacks the key 'ask'")]
    [InlineData("simple: 2", "simple: 0", "0, marks: 1 }\n  - { id: complete", "a whole number from 1")]
    public void A_fault_is_told_where_it_stands(string from, string to, string marker, string reason) =>
        Files.AssertFault(Files.Magnesium, from, to, marker, reason);
}
