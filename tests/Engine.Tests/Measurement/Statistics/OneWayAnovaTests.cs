using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class OneWayAnovaTests(ITestOutputHelper output)
{
    /// <summary>
    /// Certified values: NIST statistical reference datasets, one-way analysis of variance. SmLs04 to 06 lie near 10⁶ and SmLs07
    /// to 09 near 10¹² with a spread of 0.1: the data have no exact double there, and with what a double holds of them no
    /// arithmetic gets further than the digits asked.
    /// </summary>
    [Theory]
    [InlineData("SiRstv", 12, 13, 13)]
    [InlineData("SmLs01", 13, 13, 13)]
    [InlineData("SmLs02", 13, 13, 13)]
    [InlineData("SmLs04", 9, 9, 9)]
    [InlineData("SmLs05", 9, 9, 9)]
    [InlineData("SmLs06", 9, 9, 9)]
    [InlineData("SmLs07", 3, 3, 3)]
    [InlineData("SmLs08", 3, 3, 3)]
    [InlineData("SmLs09", 3, 3, 3)]
    public void Certified_mean_squares_and_F_are_met(string dataset, double between, double within, double f)
    {
        double[][] groups = ReferenceTable.Read($"nist_anova_{dataset}.csv").Groups("group", "y");
        ReferenceRow certified = ReferenceTable.Read("nist_anova_certified.csv").Rows
            .Single(row => row.Text("dataset") == dataset);
        OneWayAnova table = Assert.IsType<AnovaResult.Compared>(OneWayAnova.Compare(groups)).Table;

        double[] digits =
        [
            Digits.Agreed(table.BetweenMeanSquare, certified.Number("ms_between")),
            Digits.Agreed(table.WithinMeanSquare, certified.Number("ms_within")),
            Digits.Agreed(table.FStatistic, certified.Number("f_statistic")),
        ];
        output.WriteLine($"| {dataset} | {digits[0]:0.0} | {digits[1]:0.0} | {digits[2]:0.0} |");

        Assert.Equal(certified.Number("df_between"), table.BetweenDegreesOfFreedom);
        Assert.Equal(certified.Number("df_within"), table.WithinDegreesOfFreedom);
        Assert.True(digits[0] >= between && digits[1] >= within && digits[2] >= f, string.Join(' ', digits));
        Assert.True(Digits.Agreed(table.RSquared, certified.Number("r_squared")) >= f);
        Assert.True(Digits.Agreed(table.ResidualStandardDeviation, certified.Number("residual_sd")) >= within);
    }

    [Fact]
    public void Two_groups_give_the_square_of_Students_t_and_its_probability()
    {
        // t.test(c(1.64, 1.66, 1.65), c(1.70, 1.68, 1.71), var.equal = TRUE) in R 4.2.2.
        OneWayAnova table = Assert.IsType<AnovaResult.Compared>(
            OneWayAnova.Compare([[1.64, 1.66, 1.65], [1.70, 1.68, 1.71]])).Table;
        Agree.Relative(1e-10, 4.4271887242357 * 4.4271887242357, table.FStatistic);
        Agree.Relative(1e-10, 0.0114469132304, table.Probability);
    }

    [Fact]
    public void Groups_without_spread_or_without_difference_have_an_answer()
    {
        Assert.Equal(double.PositiveInfinity, Table([[1, 1], [2, 2]]).FStatistic);
        Assert.Equal(0, Table([[1, 1], [2, 2]]).Probability);
        Assert.Equal(0, Table([[3, 3], [3, 3]]).FStatistic);
        Assert.Equal(1, Table([[3, 3], [3, 3]]).Probability);
        Assert.IsType<AnovaResult.NotCompared>(OneWayAnova.Compare([[1, 2]]));
        Assert.IsType<AnovaResult.NotCompared>(OneWayAnova.Compare([[1], [2]]));
    }

    [Fact]
    public void Squares_between_and_within_add_up_to_the_squares_about_the_mean() =>
        Gen.Double[-10, 10].Array[1, 8].Array[2, 8].Always(groups =>
        {
            if (OneWayAnova.Compare(groups) is AnovaResult.Compared { Table: var table })
            {
                double[] all = [.. groups.SelectMany(group => group)];
                Agree.Within(
                    1e-10, Summary.SumOfSquaredDeviations(all), table.BetweenSumOfSquares + table.WithinSumOfSquares);
            }
        }, iter: 200);

    private static OneWayAnova Table(IReadOnlyList<IReadOnlyList<double>> groups) =>
        Assert.IsType<AnovaResult.Compared>(OneWayAnova.Compare(groups)).Table;
}
