using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class SummaryTests(ITestOutputHelper output)
{
    /// <summary>
    /// Certified values: NIST statistical reference datasets, univariate. NumAcc3 and NumAcc4 are lost before any
    /// arithmetic: 1000000.2 and 10000000.2 have no exact double, which leaves 9 and 8 digits of a spread of 0.1.
    /// </summary>
    [Theory]
    [InlineData("Lew", 14, 14, 14)]
    [InlineData("Lottery", 14, 14, 14)]
    [InlineData("Mavro", 14, 13, 12)]
    [InlineData("NumAcc1", 15, 15, 15)]
    [InlineData("NumAcc2", 14, 14, 14)]
    [InlineData("NumAcc3", 14, 9, 9)]
    [InlineData("NumAcc4", 14, 8, 8)]
    [InlineData("PiDigits", 14, 14, 13)]
    public void Certified_mean_standard_deviation_and_autocorrelation_are_met(
        string dataset, double mean, double deviation, double autocorrelation)
    {
        double[] values = ReferenceTable.Read($"nist_univariate_{dataset}.csv").Column("y");
        ReferenceRow certified = ReferenceTable.Read("nist_univariate_certified.csv").Rows
            .Single(row => row.Text("dataset") == dataset);

        double[] digits =
        [
            Digits.Agreed(Summary.Mean(values), certified.Number("mean")),
            Digits.Agreed(Summary.StandardDeviation(values), certified.Number("sd_n_minus_1")),
            Digits.Agreed(Summary.Lag1Autocorrelation(values), certified.Number("lag1_autocorrelation")),
        ];
        output.WriteLine($"| {dataset} | {digits[0]:0.0} | {digits[1]:0.0} | {digits[2]:0.0} |");

        Assert.True(digits[0] >= mean && digits[1] >= deviation && digits[2] >= autocorrelation, string.Join(' ', digits));
    }

    [Fact]
    public void Median_and_absolute_deviation_of_copper_in_flour_are_those_of_the_robust_literature()
    {
        // AMC, Analyst 114 (1989) 1693; median 3.385 and 1.4826 MAD 0.526323 as the MASS documentation prints them.
        double[] chem = RobustData.Of("chem");
        Assert.Equal(3.385, Summary.Median(chem), 12);
        Assert.Equal(0.526323, Summary.MedianAbsoluteDeviation(chem), 6);
        Assert.Equal(0.355, Summary.UnscaledMedianAbsoluteDeviation(chem), 12);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.25, 1.75)]
    [InlineData(0.5, 2.5)]
    [InlineData(0.9, 3.7)]
    [InlineData(1, 4)]
    public void Quantiles_are_linear_between_order_statistics(double p, double expected)
    {
        // R 4.2.2: quantile(c(4, 1, 3, 2), p), type 7.
        Assert.Equal(expected, Summary.Quantile([4, 1, 3, 2], p), 14);
    }

    [Fact]
    public void Scatter_in_the_last_place_of_large_numbers_is_kept()
    {
        // Exact by hand: the deviations are -1, 0, 1 and the mean has no rounding.
        Assert.Equal(1, Summary.StandardDeviation([1e15 - 1, 1e15, 1e15 + 1]));
        Assert.Equal(2.0 / 3, Summary.Mean([1e15, 2, -1e15]), 15);
    }

    [Fact]
    public void Shifting_and_scaling_the_values_shifts_and_scales_what_describes_them() =>
        SomeValues.Select(Gen.Double[-100, 100], Gen.Double[0.1, 10]).Always((values, shift, scale) =>
        {
            double[] moved = Array.ConvertAll(values, value => shift + (scale * value));
            Agree.Within(1e-9, shift + (scale * Summary.Mean(values)), Summary.Mean(moved));
            Agree.Within(1e-9, shift + (scale * Summary.Median(values)), Summary.Median(moved));
            Agree.Within(1e-9, scale * Summary.StandardDeviation(values), Summary.StandardDeviation(moved));
            Agree.Within(1e-9, scale * Summary.MedianAbsoluteDeviation(values), Summary.MedianAbsoluteDeviation(moved));
        }, iter: 300);

    [Fact]
    public void The_order_of_the_values_changes_nothing() => SomeValues.Always(values =>
    {
        double[] turned = [.. values.Reverse()];
        Agree.Within(1e-12, Summary.Mean(values), Summary.Mean(turned));
        Agree.Within(1e-12, Summary.StandardDeviation(values), Summary.StandardDeviation(turned));
        Assert.Equal(Summary.Quantile(values, 0.3), Summary.Quantile(turned, 0.3));
    }, iter: 300);

    [Fact]
    public void Too_few_values_and_values_that_are_no_numbers_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Summary.Mean([]));
        Assert.Throws<ArgumentException>(() => Summary.StandardDeviation([1]));
        Assert.Throws<ArgumentException>(() => Summary.Median([1, double.NaN]));
        Assert.Throws<ArgumentException>(() => Summary.Mean([double.PositiveInfinity]));
        Assert.Throws<ArgumentException>(() => Summary.Lag1Autocorrelation([2, 2, 2]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Summary.Quantile([1, 2], 1.01));
    }

    private static Gen<double[]> SomeValues => Gen.Double[-1000, 1000].Array[2, 30];
}
