using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

// A practical that expects no change: the magnesium file with its expectation turned. The band is two divisions, 0.02 g.
public class SamenessTests
{
    private static readonly Practical NothingChanges = Turned();

    // Eight changes of 0.00 or ± 0.01 g, mean 0, sd 0.00756: t = 0.02/(0.00756/√8) = 7.5 with 7 degrees of freedom, p < 0.001.
    [Fact]
    public void Changes_of_a_division_exclude_a_change_of_two()
    {
        var sameness = Assert.IsType<ChangeEvidence.Sameness>(
            Analyse("30.00", "30.01", "29.99", "30.00", "30.01", "29.99", "30.00", "30.00").Class.Change);

        Assert.True(sameness.Shown);
        Assert.Equal(0.02, sameness.BandInGrams, 1e-12);
        Assert.InRange(sameness.P, 0, 0.001);
        Assert.StartsWith("The mass stayed the same within 0.02 g", sameness.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_as_large_as_the_band_do_not_show_sameness()
    {
        var sameness = Assert.IsType<ChangeEvidence.Sameness>(
            Analyse("30.02", "30.01", "30.03", "30.02", "30.01", "30.03", "30.02", "30.02").Class.Change);

        Assert.False(sameness.Shown);
        Assert.Contains("cannot exclude", sameness.Sentence, StringComparison.Ordinal);
    }

    // One group at 0.01 g: u of a change is 0.0107 g, so 0.02 g is only 1.87 of it, a one-sided p of 0.031.
    [Fact]
    public void One_group_is_judged_by_what_the_balance_leaves_open()
    {
        var sameness = Assert.IsType<ChangeEvidence.Sameness>(Analyse("30.00").Class.Change);

        Assert.Equal(0.031, sameness.P, 0.001);
    }

    // On a balance of 0.001 g: mean change 0.005 g, sd 0.00107 g, eight groups. Two divisions, 0.002 g, it exceeds. Within 0.02 g it stays:
    // t = (0.02 - 0.005)/(0.00107/√8) = 40 with 7 degrees of freedom (Schuirmann 1987; by hand).
    [Theory]
    [InlineData("stays: massChange", false, 0.002, "These data cannot exclude a change of more than 0.002 g: it is")]
    [InlineData("stays: { quantity: massChange, within: 0.02 }", true, 0.02, "The mass stayed the same within 0.02 g, the band that this practical sets: the change is 0.005")]
    [InlineData("stays: { quantity: massChange, within: 0.001 }", false, 0.002, "These data cannot exclude a change of more than 0.002 g: it is")]
    public void A_band_in_grams_holds_for_a_finer_balance(string test, bool shown, double bandInGrams, string sentence)
    {
        Practical practical = Turned(("test: { rises: massChange }", $"test: {{ {test} }}"));
        string[] after = ["30.005", "30.006", "30.004", "30.005", "30.006", "30.003", "30.006", "30.005"];
        var sameness = Assert.IsType<ChangeEvidence.Sameness>(ClassAnalysis.Of(
            practical,
            Given.Class(
                practical, new BalanceOptions(0.001m, null), [.. after.Select((digits, i) => Given.Group($"{i + 1}", ("empty", "29.700"), ("before", "30.000"), ("after", digits)))]),
            Given.Weights, Given.NoCauses).Class.Change);

        Assert.Equal((shown, bandInGrams), (sameness.Shown, Math.Round(sameness.BandInGrams, 9)));
        Assert.StartsWith(sentence, sameness.Sentence, StringComparison.Ordinal);
    }

    private static ClassFindings Analyse(params string[] after) => ClassAnalysis.Of(
        NothingChanges,
        Given.Class(NothingChanges, [.. after.Select((digits, i) => Given.Group($"{i + 1}", ("empty", "29.70"), ("before", "30.00"), ("after", digits)))]),
        Given.Weights, Given.NoCauses);

    private static Practical Turned(params (string Was, string Becomes)[] changes)
    {
        string text = changes.Append((Was: "expect: rises", Becomes: "expect: same")).Aggregate(
            Given.Magnesium.SourceText, (t, change) => t.Replace(change.Was, change.Becomes, StringComparison.Ordinal));
        PracticalReading reading = PracticalReader.Read(text, "turned.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }
}
