using System.Globalization;
using Calx.Measurement.Statistics;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class BootstrapTests
{
    /// <summary>boot.ci of the R package boot 1.3-28, fed with the same replicates: tests/reference/scripts/exact.R.</summary>
    [Fact]
    public void Same_replicates_give_the_same_interval_as_another_program()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/boot_bca.csv").Rows)
        {
            double[] values = Numbers(row.Text("values"));
            Func<double[], double> statistic = row.Text("statistic") switch
            {
                "mean" => x => Summary.Mean(x),
                "sd" => x => Summary.StandardDeviation(x),
                _ => x => Summary.StandardDeviation(x) / Summary.Mean(x),
            };
            double[] leaveOneOut = [.. values.Select((_, left) => statistic([.. values.Where((_, i) => i != left)]))];
            var found = Assert.IsType<BootstrapResult.Found>(
                Bootstrap.FromReplicates(statistic(values), Numbers(row.Text("replicates")), leaveOneOut, 0.95));
            Agree.Within(1e-9, row.Number("low"), found.Interval.Low);
            Agree.Within(1e-9, row.Number("high"), found.Interval.High);
            Agree.Relative(1e-9, row.Number("standard_error"), found.StandardError);
        }
    }

    [Fact]
    public void Own_resamples_give_that_interval_within_chance()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/boot_many.csv").Rows)
        {
            double[] values = Numbers(row.Text("values"));
            var found = Assert.IsType<BootstrapResult.Found>(
                Bootstrap.OfValues(values, x => x.Average(), new BootstrapSettings(7, 20_000)));
            // The 2.5 % point of 20,000 draws has standard error 0.019 standard errors of the mean; five of those.
            Agree.Within(0.1 * found.StandardError, row.Number("low"), found.Interval.Low);
            Agree.Within(0.1 * found.StandardError, row.Number("high"), found.Interval.High);
            // The standard error of a mean under resampling is exactly √(Σd²)/n; of a spread of 20,000 draws, 1/√40,000.
            double exact = Math.Sqrt(Summary.SumOfSquaredDeviations(values)) / values.Length;
            Agree.Relative(0.025, exact, found.StandardError);
        }
    }

    [Fact]
    public void Any_number_of_threads_gives_the_same_digits()
    {
        double[] values = RobustData.Of("chem");
        var one = Assert.IsType<BootstrapResult.Found>(
            Bootstrap.OfValues(values, x => Summary.Median(x), new BootstrapSettings(3, 1000)));
        foreach (int threads in new[] { 2, 3, 8 })
        {
            var many = Assert.IsType<BootstrapResult.Found>(
                Bootstrap.OfValues(values, x => Summary.Median(x), new BootstrapSettings(3, 1000, 0.95, threads)));
            Assert.Equal(one.Interval, many.Interval);
            Assert.Equal(one.StandardError, many.StandardError);
        }
    }

    [Fact]
    public void Another_seed_gives_other_digits()
    {
        double[] values = RobustData.Of("chem");
        var one = Assert.IsType<BootstrapResult.Found>(
            Bootstrap.OfValues(values, x => x.Average(), new BootstrapSettings(3, 500)));
        var other = Assert.IsType<BootstrapResult.Found>(
            Bootstrap.OfValues(values, x => x.Average(), new BootstrapSettings(4, 500)));
        Assert.NotEqual(one.StandardError, other.StandardError);
    }

    [Fact]
    public void Values_without_spread_and_statistics_without_value_leave_no_interval()
    {
        var settings = new BootstrapSettings(1, 200);
        Assert.IsType<BootstrapResult.NotFound>(Bootstrap.OfValues([2, 2, 2], x => x.Average(), settings));
        Assert.IsType<BootstrapResult.NotFound>(Bootstrap.OfValues([1, 2, 3], _ => double.NaN, settings));
        Assert.IsType<BootstrapResult.NotFound>(Bootstrap.FromReplicates(9, [1, 2, 3], [1, 2], 0.95));
        Assert.Throws<ArgumentException>(() => Bootstrap.OfValues([1], x => x.Average(), settings));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BootstrapSettings(1, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => new BootstrapSettings(1, 200, 1));
    }

    private static double[] Numbers(string text) =>
        [.. text.Split(' ').Select(part => double.Parse(part, CultureInfo.InvariantCulture))];
}
