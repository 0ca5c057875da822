using Calx.Measurement.Distributions;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Distributions;

public sealed class PertTests
{
    private static readonly Gen<(double Least, double Likely, double Most)> Estimates =
        from least in Gen.Double[0, 20]
        from first in Gen.Double[0, 10]
        from second in Gen.Double[0.01, 10]
        select (least, least + first, least + first + second);

    /// <summary>The numbers of a published worked example are not at hand; mean and shapes are the definition's own
    /// (Malcolm and others, 1959), worked out by hand: 8, 12, 20 has mean 76/6, shapes 7/3 and 11/3.</summary>
    [Fact]
    public void Mean_and_spread_of_a_burn_of_8_12_20_minutes()
    {
        var burn = new Pert(8, 12, 20);
        Assert.Equal(76.0 / 6, burn.Mean, 12);
        // 12 · √(αβ / ((α+β)²(α+β+1))) = 12 · √((77/9) / 252)
        Assert.Equal(12 * Math.Sqrt(77.0 / 9 / 252), burn.StandardDeviation, 12);
    }

    [Fact]
    public void Three_estimates_evenly_spread_make_the_beta_of_three_and_three()
    {
        // Beta(3, 3) has the cumulative x³(10 − 15x + 6x²).
        var law = new Pert(0, 0.5, 1);
        foreach (double x in (double[])[0.1, 0.25, 0.5, 0.8, 0.99])
        {
            Assert.Equal(x * x * x * (10 - (15 * x) + (6 * x * x)), law.Cumulative(x), 12);
        }
    }

    [Fact]
    public void Quick_quantiles_are_the_law_s_own()
    {
        Estimates.Always(
            e =>
            {
                var law = new Pert(e.Least, e.Likely, e.Most);
                double range = e.Most - e.Least;
                for (int i = 1; i < 400; i++)
                {
                    double p = i / 400.0;
                    Assert.Equal(law.Quantile(p), law.QuickQuantile(p), 5e-4 * range);
                }

                foreach (double tail in (double[])[1e-6, 3e-4, 1 - 3e-4, 1 - 1e-6])
                {
                    Assert.Equal(law.Quantile(tail), law.QuickQuantile(tail), 3e-3 * range);
                }
            },
            iter: 30);
    }

    [Fact]
    public void Quick_draws_have_the_law_s_mean_and_spread()
    {
        var law = new Pert(1, 2, 6);
        const int Draws = 100_000;
        // Evenly laid out shares: the sums are integrals, so only the straight lines of the table are left as error.
        double[] values = [.. Enumerable.Range(0, Draws).Select(i => law.QuickQuantile((i + 0.5) / Draws))];
        double mean = values.Average();
        Assert.Equal(law.Mean, mean, 2e-5);
        Assert.Equal(law.StandardDeviation, Math.Sqrt(values.Average(v => (v - mean) * (v - mean))), 1e-4);
    }

    [Fact]
    public void A_certain_duration_is_itself()
    {
        var law = new Pert(3, 3, 3);
        Assert.Equal((3, 3, 0), (law.QuickQuantile(0.2), law.Quantile(0.9), law.StandardDeviation));
        Assert.Equal((0, 1), (law.Cumulative(2.9), law.Cumulative(3)));
    }

    [Fact]
    public void Estimates_that_do_not_rise_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Pert(4, 3, 8));
}
