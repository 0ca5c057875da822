using System.Globalization;
using Calx.Measurement.Statistics;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class EquivalenceTests
{
    /// <summary>t.test against each bound in R: tests/reference/scripts/exact.R.</summary>
    [Fact]
    public void Two_one_sided_tests_are_two_t_tests()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/equivalence.csv").Rows)
        {
            double[] values = [.. row.Text("values").Split(' ').Select(x => double.Parse(x, CultureInfo.InvariantCulture))];
            EquivalenceResult result = Equivalence.OfMean(values, row.Number("low"), row.Number("high"));
            EquivalenceEvidence evidence = Evidence(result);
            Agree.Relative(1e-8, row.Number("against_lower"), evidence.ProbabilityAgainstLower);
            Agree.Relative(1e-8, row.Number("against_upper"), evidence.ProbabilityAgainstUpper);
            Agree.Within(1e-9, row.Number("interval_low"), evidence.Interval.Low);
            Agree.Within(1e-9, row.Number("interval_high"), evidence.Interval.High);
            Assert.Equal(
                row.Number("against_lower") < 0.05 && row.Number("against_upper") < 0.05,
                result is EquivalenceResult.WithinBounds);
        }
    }

    [Fact]
    public void A_small_change_with_a_fine_balance_is_none_and_with_a_coarse_one_cannot_be_told()
    {
        // Normal quantile 1.644854 at 5 %: 0.01 + 1.645 u stays below 0.05 for u = 0.02, not for u = 0.03.
        Assert.IsType<EquivalenceResult.WithinBounds>(Known(0.01, 0.02));
        Assert.IsType<EquivalenceResult.CannotTell>(Known(0.01, 0.03));
        Assert.IsType<EquivalenceResult.BeyondBounds>(Known(0.10, 0.03));
        Assert.IsType<EquivalenceResult.BeyondBounds>(Known(-0.10, 0.03));
    }

    [Fact]
    public void A_single_value_or_equal_values_do_not_show_their_spread()
    {
        Assert.IsType<EquivalenceResult.NotTested>(Equivalence.OfMean([0.01], -0.02, 0.02));
        Assert.IsType<EquivalenceResult.NotTested>(Equivalence.OfMean([0.01, 0.01, 0.01], -0.02, 0.02));
        Assert.Throws<ArgumentException>(() => Equivalence.OfMean([], -1, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Equivalence.OfMean([1, 2], 1, -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Equivalence.OfMean([1, 2], -1, 1, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => Equivalence.OfEstimate(0, 0, 5, (-1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Equivalence.OfEstimate(0, 1, 0, (-1, 1)));
    }

    private static EquivalenceResult Known(double value, double u) =>
        Equivalence.OfEstimate(value, u, double.PositiveInfinity, (-0.05, 0.05));

    private static EquivalenceEvidence Evidence(EquivalenceResult result) => result switch
    {
        EquivalenceResult.WithinBounds within => within.Evidence,
        EquivalenceResult.BeyondBounds beyond => beyond.Evidence,
        EquivalenceResult.CannotTell open => open.Evidence,
        _ => throw new ArgumentException("There is no evidence.", nameof(result)),
    };
}
