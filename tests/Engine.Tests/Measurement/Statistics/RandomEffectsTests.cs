using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class RandomEffectsTests
{
    /// <summary>
    /// ISO 5725-2:1994, annex B.1, sulfur in coal: m, s_r, s_R of four levels (values from memory; the data reproduce
    /// all twelve).
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Precision_of_sulfur_in_coal_is_that_of_the_standard(int level)
    {
        ReferenceRow expected = ReferenceTable.Read("iso5725_2_coal_results.csv").Rows[level - 1];
        GroupSpread found = Separated(RandomEffects.FromGroupsByAnova(Coal(level)));

        Assert.Equal(8, found.GroupCount);
        Assert.Equal(expected.Number("m"), found.Mean, level is 1 or 4 ? 2 : 3);
        Assert.Equal(expected.Number("s_r"), found.Repeatability, 3);
        Assert.Equal(expected.Number("s_R"), found.Reproducibility, 3);
        Assert.Equal(expected.Number("computed_m"), found.Mean, 4);
        Assert.Equal(expected.Number("computed_s_R"), found.Reproducibility, 4);
    }

    /// <summary>lme4, nlme and a matrix likelihood: tests/reference/scripts/reml.R. Dyestuff published: 42.00 and 49.51.</summary>
    [Fact]
    public void Restricted_likelihood_agrees_with_two_other_programs_on_unequal_groups()
    {
        ReferenceTable data = ReferenceTable.Read("computed/reml_groups.csv");
        foreach (ReferenceRow row in ReferenceTable.Read("computed/reml_groups_results.csv").Rows)
        {
            double[][] groups = [.. data.Rows.Where(r => r.Text("case") == row.Text("case"))
                .GroupBy(r => r.Text("group")).Select(g => g.Select(r => r.Number("value")).ToArray())];
            GroupSpread found = Separated(RandomEffects.FromGroups(groups));
            double scale = found.Reproducibility;

            Agree.Within(1e-7 * scale, row.Number("mean"), found.Mean);
            Agree.Within(1e-6 * scale, row.Number("se"), found.StandardUncertainty);
            Agree.Within(1e-6 * scale, row.Number("within"), found.Repeatability);
            Agree.Within(1e-6 * scale, row.Number("between"), found.Between);
            Agree.Within(1e-5 * scale, row.Number("matrix_between"), found.Between);
        }
    }

    [Fact]
    public void Groups_of_one_size_have_a_closed_form_and_the_likelihood_meets_it() =>
        BalancedGroups.Always(groups =>
        {
            GroupSpread likelihood = Separated(RandomEffects.FromGroups(groups));
            GroupSpread anova = Separated(RandomEffects.FromGroupsByAnova(groups));
            Agree.Within(1e-12, anova.Mean, likelihood.Mean);
            Agree.Within(1e-9, Square(anova.Between), Square(likelihood.Between));
            if (anova.Spread is BetweenSpread.Found)
            {
                Agree.Within(1e-9, anova.Repeatability, likelihood.Repeatability);
                Agree.Within(1e-9, anova.StandardUncertainty, likelihood.StandardUncertainty);
            }
            else
            {
                // At the boundary all results share one spread: the plain standard deviation.
                double[] all = [.. groups.SelectMany(group => group)];
                Agree.Within(1e-8, Summary.StandardDeviation(all), likelihood.Repeatability);
            }
        }, iter: 200);

    [Fact]
    public void Groups_that_differ_less_than_their_own_spread_have_no_spread_between()
    {
        double[][] groups = [[1, 3], [1.1, 2.9], [0.9, 3.1]];
        Assert.IsType<BetweenSpread.NoneSeen>(Separated(RandomEffects.FromGroups(groups)).Spread);
        Assert.IsType<BetweenSpread.NoneSeen>(Separated(RandomEffects.FromGroupsByAnova(groups)).Spread);
    }

    [Fact]
    public void Equal_results_within_every_group_leave_all_the_spread_between()
    {
        GroupSpread found = Separated(RandomEffects.FromGroups([[0.1, 0.1], [0.2, 0.2, 0.2], [0.3, 0.3]]));
        Assert.Equal(0, found.Repeatability);
        Assert.Equal(0.1, found.Between, 12);
        Assert.Equal(0.2, found.Mean, 12);
        Assert.Equal(0, Separated(RandomEffects.FromGroups([[5, 5], [5, 5]])).Reproducibility);
    }

    [Fact]
    public void One_group_or_one_result_a_group_cannot_tell_the_spreads_apart()
    {
        Assert.Contains("one group", Reason(RandomEffects.FromGroups([[1, 2, 3]])), StringComparison.Ordinal);
        Assert.Contains("single result", Reason(RandomEffects.FromGroups([[1], [2], [3]])), StringComparison.Ordinal);
        Assert.Contains("single result", Reason(RandomEffects.FromGroupsByAnova([[1], [2]])), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => RandomEffects.FromGroups([]));
        Assert.Throws<ArgumentException>(() => RandomEffects.FromGroups([[1], []]));
        Assert.Throws<ArgumentException>(() => RandomEffects.FromGroups([[1, double.NaN], [2, 3]]));
    }

    [Fact]
    public void Shifting_scaling_and_reordering_groups_does_the_same_to_the_result() =>
        Gen.Select(AnyGroups, Gen.Double[-50, 50], Gen.Double[0.1, 10]).Always((groups, shift, scale) =>
        {
            GroupSpread plain = Separated(RandomEffects.FromGroups(groups));
            double[][] moved = [.. groups.Reverse().Select(g => g.Select(y => shift + (scale * y)).ToArray())];
            GroupSpread changed = Separated(RandomEffects.FromGroups(moved));
            Agree.Within(1e-7 * scale, shift + (scale * plain.Mean), changed.Mean);
            Agree.Within(1e-6 * scale, scale * plain.Repeatability, changed.Repeatability);
            Agree.Within(1e-9 * scale * scale, Square(scale * plain.Between), Square(changed.Between));
        }, iter: 200);

    private static Gen<double[][]> BalancedGroups =>
        Gen.Int[2, 6].SelectMany(size => Gen.Double[0, 1].Array[size].Array[2, 10]);

    private static Gen<double[][]> AnyGroups => Gen.Double[0, 1].Array[2, 7].Array[2, 10];

    private static double[][] Coal(int level) =>
        [.. ReferenceTable.Read("iso5725_2_coal_data.csv").Rows
            .Where(row => row.Number("level") == level)
            .GroupBy(row => row.Text("lab"))
            .Select(lab => lab.Select(row => row.Number("value")).ToArray())];

    private static double Square(double value) => value * value;

    private static GroupSpread Separated(GroupSpreadResult result) =>
        Assert.IsType<GroupSpreadResult.Separated>(result).Spread;

    private static string Reason(GroupSpreadResult result) =>
        Assert.IsType<GroupSpreadResult.NotSeparable>(result).Reason;
}
