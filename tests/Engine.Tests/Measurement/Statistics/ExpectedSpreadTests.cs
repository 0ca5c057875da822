using Calx.Measurement.Distributions;
using Calx.Measurement.Statistics;

namespace Calx.Engine.Tests.Measurement.Statistics;

/// <summary>Few values pooled with a half-normal law for the spread between them: closed forms, the slow way, and coverage.</summary>
public sealed class ExpectedSpreadTests
{
    // One value says nothing of τ: the variance is u² + E τ² = u² + s², and the kurtosis that of the mixture, 3 Var τ² over the
    // variance squared, Var τ² = 2 s⁴ (moments of the half-normal law).
    [Theory]
    [InlineData(0.1, 0.2)]
    [InlineData(0.01, 0.2)]
    [InlineData(0.1, 0.01)]
    public void One_value_is_as_uncertain_as_groups_differ(double u, double s)
    {
        PooledResult found = RandomEffects.FromKnownUncertainties([7.5], [u], s);

        double variance = (u * u) + (s * s);
        double degrees = Math.Min(1e6, 4 + (6 / (6 * s * s * s * s / (variance * variance))));
        Assert.Equal(7.5, found.Value, 1e-12);
        Assert.Equal(degrees, found.DegreesOfFreedom, 2e-3 * degrees);
        Assert.Equal(Math.Sqrt(variance * (degrees - 2) / degrees), found.StandardUncertainty, 1e-3 * u);
    }

    [Fact]
    public void Where_groups_hardly_differ_it_is_the_weighted_mean()
    {
        PooledResult found = RandomEffects.FromKnownUncertainties([1, 1.1], [0.1, 0.2], 1e-4);

        Assert.Equal((100 + (25 * 1.1)) / 125, found.Value, 1e-6);
        Assert.Equal(1 / Math.Sqrt(125), found.StandardUncertainty, 1e-6);
    }

    [Fact]
    public void Where_nothing_is_expected_the_values_alone_decide()
    {
        double[] values = [1.0, 1.1, 1.4];
        double[] u = [0.1, 0.05, 0.1];
        PooledResult alone = RandomEffects.FromKnownUncertainties(values, u);
        PooledResult found = RandomEffects.FromKnownUncertainties(values, u, 0);

        Assert.Equal((alone.Value, alone.StandardUncertainty, 2), (found.Value, found.StandardUncertainty, found.DegreesOfFreedom));
    }

    /// <summary>The slow way: the posterior of mean and spread on a fine lattice of both, with nothing integrated beforehand.</summary>
    [Theory]
    [InlineData(new[] { 0.90, 0.99 }, new[] { 0.1, 0.1 })]
    [InlineData(new[] { 0.90, 1.25, 1.02 }, new[] { 0.1, 0.05, 0.08 })]
    [InlineData(new[] { 0.90, 0.95, 1.02, 0.7, 0.93 }, new[] { 0.1, 0.1, 0.08, 0.09, 0.1 })]
    public void It_agrees_with_a_lattice_of_mean_and_spread(double[] values, double[] u)
    {
        const double Scale = 0.25;
        PooledResult found = RandomEffects.FromKnownUncertainties(values, u, Scale);

        (double mean, double variance) = Lattice(values, u, Scale);

        Assert.Equal(mean, found.Value, 2e-4);
        double degrees = found.DegreesOfFreedom;
        Assert.Equal(Math.Sqrt(variance), found.StandardUncertainty * Math.Sqrt(degrees / (degrees - 2)), 5e-4);
    }

    /// <summary>What says 90 % is right in about 90 of 100: groups drawn as the model has it, 4000 classes of each size, so that the
    /// counting is good to 0.005 (one standard error).</summary>
    [Theory]
    [InlineData(1, 0.1)]
    [InlineData(2, 0.1)]
    [InlineData(4, 0.1)]
    [InlineData(8, 0.1)]
    [InlineData(1, 0.01)]
    [InlineData(2, 0.01)]
    [InlineData(4, 0.01)]
    [InlineData(8, 0.01)]
    public void An_interval_of_90_percent_holds_the_mean_in_about_90_of_100_classes(int groups, double u)
    {
        const double Scale = 0.2;
        const int Classes = 4000;
        var stream = new RandomStream((ulong)groups, 7);
        int held = 0;
        double[] values = new double[groups];
        double[] errors = [.. Enumerable.Repeat(u, groups)];
        for (int c = 0; c < Classes; c++)
        {
            double between = Math.Abs(Scale * stream.NextNormal());
            for (int g = 0; g < groups; g++)
            {
                values[g] = (between * stream.NextNormal()) + (u * stream.NextNormal());
            }

            var interval = RandomEffects.FromKnownUncertainties(values, errors, Scale).IntervalFor(0.9);
            held += interval.Low <= 0 && interval.High >= 0 ? 1 : 0;
        }

        Assert.InRange((double)held / Classes, 0.88, 0.94);
    }

    private static (double Mean, double Variance) Lattice(double[] values, double[] u, double scale)
    {
        double total = 0;
        double first = 0;
        double second = 0;
        for (double between = 0.0005; between < 5 * scale; between += 0.001)
        {
            for (double mean = -1.5; mean < 3.5; mean += 0.005)
            {
                double log = -0.5 * between * between / (scale * scale);
                for (int i = 0; i < values.Length; i++)
                {
                    double variance = (u[i] * u[i]) + (between * between);
                    log -= 0.5 * (Math.Log(variance) + ((values[i] - mean) * (values[i] - mean) / variance));
                }

                double weight = Math.Exp(log);
                total += weight;
                first += weight * mean;
                second += weight * mean * mean;
            }
        }

        return (first / total, (second / total) - (first / total * (first / total)));
    }
}
