using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class PooledResultTests
{
    /// <summary>A matrix likelihood and weighted lm in R: tests/reference/scripts/reml.R.</summary>
    [Fact]
    public void Pooling_agrees_with_a_matrix_likelihood_and_weighted_least_squares()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/reml_known_results.csv").Rows)
        {
            PooledResult found = Pool(row.Text("case"));
            Agree.Within(1e-8, row.Number("mean"), found.Value);
            Agree.Within(1e-7, row.Number("se_hartung_knapp_at_least_plain"), found.StandardUncertainty);
            Agree.Within(2e-7, row.Number("between"), found.Between);
            Agree.Within(1e-6, row.Number("low"), found.Interval.Low);
            Agree.Within(1e-6, row.Number("high"), found.Interval.High);
            Assert.Equal(1, found.Q / row.Number("q"), 9);
        }
    }

    [Fact]
    public void Thirteen_vaccine_trials_pool_to_the_published_variance_between()
    {
        // The standard example of the metafor documentation: τ² 0.3132, estimate -0.7145, Q 152.2330, I² 92.22 %
        // (Q read there; the others from memory, and met by the script reml.R).
        PooledResult found = Pool("bcg");
        Assert.Equal(0.3132, found.Between * found.Between, 4);
        Assert.Equal(-0.7145, found.Value, 4);
        Assert.Equal(152.2330, found.Q, 4);
    }

    [Fact]
    public void Equal_uncertainties_have_a_closed_form()
    {
        // With one u for all: the plain mean, τ² = s² - u², standard uncertainty s/√n. Here s² = 0.025 exactly.
        PooledResult found = RandomEffects.FromKnownUncertainties([1.0, 1.1, 1.2, 1.3, 1.4], [0.1, 0.1, 0.1, 0.1, 0.1]);
        Assert.Equal(1.2, found.Value, 12);
        Assert.Equal(Math.Sqrt(0.025 - 0.01), found.Between, 10);
        Assert.Equal(Math.Sqrt(0.025 / 5), found.StandardUncertainty, 10);
        Assert.Equal(0.1, found.Within, 12);
        Assert.Equal(4, found.DegreesOfFreedom);
        Assert.Equal((10 - 4.0) / 10, found.ISquared, 10);
    }

    [Fact]
    public void Values_that_agree_too_well_are_not_credited_with_less_than_their_uncertainties()
    {
        PooledResult found = RandomEffects.FromKnownUncertainties([2, 2, 2, 2], [0.1, 0.1, 0.1, 0.1]);
        Assert.IsType<BetweenSpread.NoneSeen>(found.Spread);
        Assert.Equal(0.05, found.StandardUncertainty, 12);
        Assert.Equal(0, found.ISquared);
    }

    [Fact]
    public void One_value_stands_for_itself_and_says_nothing_of_others()
    {
        PooledResult found = RandomEffects.FromKnownUncertainties([7.5], [0.2]);
        Assert.Equal(7.5, found.Value);
        Assert.Equal(0.2, found.StandardUncertainty, 12);
        Assert.IsType<BetweenSpread.OneGroup>(found.Spread);
        Assert.Equal(double.PositiveInfinity, found.DegreesOfFreedom);
        Assert.Equal(7.5 - (1.959963984540054 * 0.2), found.Interval.Low, 12);
    }

    [Fact]
    public void Two_values_far_apart_give_half_their_distance_as_uncertainty()
    {
        // Closed form for two: s/√2 with s = |difference|/√2, whatever the (small) uncertainties when τ² > 0 and equal.
        PooledResult found = RandomEffects.FromKnownUncertainties([1, 2], [0.01, 0.01]);
        Assert.Equal(0.5, found.StandardUncertainty, 9);
        Assert.Equal(1, found.DegreesOfFreedom);
        Agree.Relative(1e-9, 12.706204736174707 * 0.5, found.Interval.Width / 2);
    }

    [Fact]
    public void A_shift_a_scale_or_another_order_does_the_same_to_the_result() =>
        Gen.Select(Gen.Double[0, 1].Array[2, 12], Gen.Double[0.01, 0.5].Array[12], Gen.Double[0.1, 10]).Always((values, all, scale) =>
        {
            double[] u = all[..values.Length];
            PooledResult plain = RandomEffects.FromKnownUncertainties(values, u);
            double[] moved = [.. values.Reverse().Select(y => 3 + (scale * y))];
            double[] wider = [.. u.Reverse().Select(x => scale * x)];
            PooledResult changed = RandomEffects.FromKnownUncertainties(moved, wider);
            Agree.Within(1e-7 * scale, 3 + (scale * plain.Value), changed.Value);
            Agree.Within(1e-7 * scale, scale * plain.StandardUncertainty, changed.StandardUncertainty);
            Agree.Within(1e-9 * scale * scale, scale * scale * plain.Between * plain.Between, changed.Between * changed.Between);
            Assert.Equal(1, changed.Weights.Sum(), 12);
        }, iter: 300);

    [Fact]
    public void Ten_thousand_groups_are_pooled_in_well_under_a_second()
    {
        double[] values = [.. Enumerable.Range(0, 10_000).Select(i => Math.Sin(i))];
        double[] u = [.. Enumerable.Range(0, 10_000).Select(i => 0.1 + (0.05 * Math.Cos(i)))];
        PooledResult found = RandomEffects.FromKnownUncertainties(values, u);
        Assert.Equal(0, found.Value, 2);
        Assert.Equal(0.7, found.Between, 2);
    }

    [Fact]
    public void Uncertainties_must_be_above_zero_and_as_many_as_values()
    {
        Assert.Throws<ArgumentException>(() => RandomEffects.FromKnownUncertainties([], []));
        Assert.Throws<ArgumentException>(() => RandomEffects.FromKnownUncertainties([1, 2], [0.1]));
        Assert.Throws<ArgumentException>(() => RandomEffects.FromKnownUncertainties([double.NaN], [0.1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => RandomEffects.FromKnownUncertainties([1, 2], [0.1, 0]));
        Assert.Throws<ArgumentOutOfRangeException>(() => RandomEffects.FromKnownUncertainties([1, 2], [0.1, double.NaN]));
    }

    private static PooledResult Pool(string name)
    {
        ReferenceRow[] rows = [.. ReferenceTable.Read("computed/reml_known.csv").Rows.Where(row => row.Text("case") == name)];
        return RandomEffects.FromKnownUncertainties(
            [.. rows.Select(row => row.Number("value"))], [.. rows.Select(row => row.Number("u"))]);
    }
}
