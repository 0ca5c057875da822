using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;

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

    private static ClassFindings Analyse(params string[] after) => ClassAnalysis.Of(
        NothingChanges,
        Given.Class(NothingChanges, [.. after.Select((digits, i) => Given.Group($"{i + 1}", ("empty", "29.70"), ("before", "30.00"), ("after", digits)))]),
        Given.Weights, Given.NoCauses);

    private static Practical Turned()
    {
        string text = Given.Magnesium.SourceText.Replace("expect: rises", "expect: same", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text, "turned.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }
}
