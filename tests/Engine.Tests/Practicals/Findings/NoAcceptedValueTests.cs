using Calx.Engine.Tests.Practicals.Definition;
using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference.Concluding;

namespace Calx.Engine.Tests.Practicals.Findings;

/// <summary>A practical whose key quantity is a property of the stock: nothing is held against an accepted value.</summary>
public class NoAcceptedValueTests
{
    private static readonly double U = new Balance(0.01, 0.007).ReadingStandardUncertainty();

    private static Practical Purity => BuiltInPracticals.Find("carbonate-purity")!;

    /// <summary>
    /// By hand, to first order (JCGM 100:2008, 5.1.2): the purity goes with (b - a)/(b - e), so that its relative sensitivities are
    /// 1/(b - a) - 1/(b - e), -1/(b - a) and 1/(b - e). With 0.59 g of 1.48 g and u = 7.57 mg a 95 % interval reaches 3.1 % of the value to
    /// either side, with 0.06 g of 0.14 g it reaches 30 %.
    /// </summary>
    [Theory]
    [InlineData(134.62, 136.10, 135.51, Bearing.Right)]
    [InlineData(134.62, 134.76, 134.70, Bearing.Open)]
    public void A_value_is_known_when_its_interval_is_narrow(double empty, double before, double after, Bearing expected)
    {
        ConclusionRule known = ConclusionRule.All(Purity, Given.Weights).Single(r => r.Test is ConclusionTest.Known);
        Assert.Equal(expected, known.OfGroup([empty, before, after], U, 0.01));
        Assert.Equal(Bearing.Right, known.OfPooled(new MeasuredValue(90, 4), 2.2));
        Assert.Equal(Bearing.Open, known.OfPooled(new MeasuredValue(90, 5), 2.2));
    }

    [Fact]
    public void A_class_is_compared_with_nothing_and_is_told_why()
    {
        ClassFindings found = ClassAnalysis.Of(
            Purity,
            Given.Class(Purity, [.. Enumerable.Range(0, 6).Select(i => Given.Group($"{i + 1}", ("empty", "134.62"), ("before", "136.10"), ("after", $"135.5{i}")))]),
            Given.Weights, Given.NoCauses);
        var none = Assert.IsType<AcceptedResult.None>(found.Class.Accepted);
        Assert.Equal(Purity.Findings.NoAccepted, none.Reason);
        Assert.DoesNotContain(found.Class.Conclusion, s => s.Contains("accepted value", StringComparison.Ordinal));
    }

    [Fact]
    public void What_has_no_accepted_value_is_held_against_none()
    {
        const string Known = "test: { known: { quantity: percentPurity, share: 0.10 } }";
        const string Within = "test: { within: { quantity: percentPurity, share: 0.10 } }";
        Files.AssertFault("carbonate-purity", Known, Within, "{ id: known", "needs an accepted value");
    }
}
