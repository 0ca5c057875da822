using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class OutlierTests
{
    /// <summary>
    /// Four decimals computed elsewhere from Student's t; three decimals printed (LibreTexts, Analytic References 07, but
    /// for its two misprints at n = 7, 5 % and n = 15, 1 %, which tests/reference/grubbs_critical.csv names).
    /// </summary>
    [Fact]
    public void Grubbs_critical_values_are_those_of_the_tables()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("grubbs_critical.csv").Rows)
        {
            int n = (int)row.Number("n");
            Agree.Within(6e-5, row.Number("one_sided_05"), Grubbs.CriticalValue(n, 0.05, OutlierSide.High));
            Agree.Within(6e-5, row.Number("one_sided_01"), Grubbs.CriticalValue(n, 0.01, OutlierSide.Low));
            Agree.Within(6e-5, row.Number("two_sided_05"), Grubbs.CriticalValue(n, 0.05, OutlierSide.Either));
            Agree.Within(6e-5, row.Number("two_sided_01"), Grubbs.CriticalValue(n, 0.01, OutlierSide.Either));
            if (row.Has("libretexts_05") && n is not (7 or 15))
            {
                Agree.Within(0.0011, row.Number("libretexts_05"), Grubbs.CriticalValue(n, 0.05, OutlierSide.Either));
                Agree.Within(0.0011, row.Number("libretexts_01"), Grubbs.CriticalValue(n, 0.01, OutlierSide.Either));
            }
        }
    }

    [Fact]
    public void Cochran_critical_values_are_those_of_the_tables()
    {
        ReferenceTable table = ReferenceTable.Read("cochran_critical.csv");
        Assert.Equal(243, table.Rows.Count);
        foreach (ReferenceRow row in table.Rows)
        {
            (int p, int n) = ((int)row.Number("p"), (int)row.Number("n"));
            double one = Cochran.CriticalValue(p, n, 0.01);
            double five = Cochran.CriticalValue(p, n, 0.05);
            Agree.Within(6e-5, row.Number("computed_01"), one);
            Agree.Within(6e-5, row.Number("computed_05"), five);
            Agree.Within(0.001, row.Has("published_01") ? row.Number("published_01") : one, one);
            Agree.Within(0.001, row.Has("published_05_iso5725") ? row.Number("published_05_iso5725") : five, five);
        }
    }

    /// <summary>For three values the distribution has a closed form: F(r) = (3/π)(atan((2r-1)/√3) + π/6).</summary>
    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(0.999)]
    public void Dixons_ratio_of_three_values_meets_its_closed_form(double ratio)
    {
        double below = 3 / Math.PI * (Math.Atan(((2 * ratio) - 1) / Math.Sqrt(3)) + (Math.PI / 6));
        Agree.Within(1e-9, 1 - below, new DixonDistribution(3, DixonRatio.R10).UpperTail(ratio));
    }

    /// <summary>1.2 million simulated samples a cell: the sim columns; standard error of a tail 0.0002 at 5 %, 0.0001 at 1 %.</summary>
    [Fact]
    public void Dixons_critical_values_are_those_of_a_simulation()
    {
        IEnumerable<(DixonRatio Ratio, ReferenceRow Row)> rows =
        [
            .. ReferenceTable.Read("dixon_q_critical.csv").Rows.Select(row => (DixonRatio.R10, row)),
            .. ReferenceTable.Read("dixon_other_ratios_doubtful.csv").Rows
                .Select(row => (Enum.Parse<DixonRatio>(row.Text("ratio"), true), row)),
        ];
        foreach ((DixonRatio ratio, ReferenceRow row) in rows)
        {
            var distribution = new DixonDistribution((int)row.Number("n"), ratio);
            Agree.Within(0.001, 0.05, distribution.UpperTail(row.Number("sim_05")));
            Agree.Within(0.0005, 0.01, distribution.UpperTail(row.Number("sim_01")));
        }
    }

    /// <summary>Rorabacher, Anal. Chem. 63 (1991) 139, table 1: Q at 95 % for either end.</summary>
    [Theory]
    [InlineData(3, 0.970)]
    [InlineData(5, 0.710)]
    [InlineData(7, 0.568)]
    [InlineData(10, 0.466)]
    public void Dixons_Q_for_either_end_is_that_of_Rorabacher(int count, double published) =>
        Agree.Within(0.0015, published, Dixon.CriticalValue(count, 0.05, DixonRatio.R10, OutlierSide.Either));

    [Fact]
    public void Dixons_recommended_ratio_grows_with_the_number_of_values()
    {
        Assert.Equal(DixonRatio.R10, Dixon.RatioFor(7));
        Assert.Equal(DixonRatio.R11, Dixon.RatioFor(10));
        Assert.Equal(DixonRatio.R21, Dixon.RatioFor(13));
        Assert.Equal(DixonRatio.R22, Dixon.RatioFor(14));
        Assert.Throws<ArgumentOutOfRangeException>(() => new DixonDistribution(5, DixonRatio.R22));
    }

    [Fact]
    public void One_group_of_twelve_that_lost_its_product_is_named_by_both_tests()
    {
        double[] ratios = [1.65, 1.66, 1.64, 1.67, 1.65, 1.66, 1.63, 1.68, 1.66, 1.65, 1.31, 1.67];
        Assert.Equal(10, Assert.IsType<OutlierResult.Outlying>(Grubbs.Test(ratios)).Evidence.Place);
        Assert.Equal(10, Assert.IsType<OutlierResult.Outlying>(Dixon.Test(ratios)).Evidence.Place);
        Assert.IsType<OutlierResult.WithinChance>(Grubbs.Test(ratios, 0.05, OutlierSide.High));
        Assert.IsType<OutlierResult.WithinChance>(Dixon.Test(ratios, 0.05, OutlierSide.High));
    }

    [Fact]
    public void Chance_and_critical_value_agree_on_every_list() =>
        Gen.Select(Gen.Double[0, 1].Array[3, 12], Gen.Int[0, 2].Select(i => (OutlierSide)i))
            .Always((values, side) =>
            {
                foreach (OutlierResult result in new[] { Grubbs.Test(values, 0.2, side), Dixon.Test(values, 0.2, side) })
                {
                    switch (result)
                    {
                        case OutlierResult.Outlying far:
                            Assert.InRange(far.Evidence.Probability, 0, 0.2 + 1e-6);
                            break;
                        case OutlierResult.WithinChance near:
                            Assert.InRange(near.Evidence.Probability, 0.2 - 1e-6, 1);
                            break;
                    }
                }
            }, iter: 12);

    [Fact]
    public void The_group_that_scatters_most_is_tested()
    {
        double[][] groups = [[1.65, 1.66, 1.64], [1.65, 1.66, 1.67], [1.64, 1.66, 1.65], [1.2, 1.9, 1.6]];
        Assert.Equal(3, Assert.IsType<OutlierResult.Outlying>(Cochran.Test(groups)).Evidence.Place);
        Assert.IsType<OutlierResult.WithinChance>(Cochran.Test([[1, 2, 3], [1.1, 2.2, 3.2]]));
    }

    [Fact]
    public void Lists_that_allow_no_test_say_why()
    {
        Assert.IsType<OutlierResult.NotTested>(Grubbs.Test([1, 2]));
        Assert.IsType<OutlierResult.NotTested>(Grubbs.Test([2, 2, 2]));
        Assert.IsType<OutlierResult.NotTested>(Dixon.Test([1, 2]));
        Assert.IsType<OutlierResult.NotTested>(Dixon.Test([2, 2, 2]));
        Assert.IsType<OutlierResult.NotTested>(Cochran.Test([[1, 2]]));
        Assert.IsType<OutlierResult.NotTested>(Cochran.Test([[1], [2]]));
        Assert.IsType<OutlierResult.NotTested>(Cochran.Test([[1, 2], [1, 2, 3]]));
        Assert.IsType<OutlierResult.NotTested>(Cochran.Test([[1, 1], [2, 2]]));
        Assert.Throws<ArgumentException>(() => Grubbs.Test([1, 2, double.NaN]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Grubbs.Test([1, 2, 3], 0));
    }
}
