using System.Globalization;
using Calx.Measurement.Weighing;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class RoundedNormalTests
{
    // rounded_normal.csv: mpmath with 2000 digits, script beside it.
    public static TheoryData<double, double, double, double, double> Cases() =>
        [.. ReferenceTable.Rows("rounded_normal.csv").Select(cells => Array.ConvertAll(cells, Number))
            .Select(v => (v[0], v[1], v[2], v[3], v[4]))];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Log_probability_of_the_digits_agrees_with_a_computation_of_many_digits(
        double shown, double step, double mean, double sd, double expected)
    {
        double actual = RoundedNormal.LogProbability(shown, step, mean, sd);
        // What a double can say of (r - m)/s bounds the agreement: the input's rounding times the slope z.
        double z = (Math.Abs(shown - mean) + step) / sd;
        double allowed = 2e-14 + (4e-16 * z * (z + (Math.Abs(shown) / sd)));
        Assert.InRange(actual, expected - allowed, expected + allowed);
    }

    [Fact]
    public void Probability_near_one_keeps_its_small_complement() =>
        // ln P = -1.52397e-23 (mpmath, as above): a subtraction from 1 would give 0.
        Assert.Equal(-1.5239706048321052e-23, RoundedNormal.LogProbability(0, 1, 0, 0.05), 1e-36);

    [Fact]
    public void Probabilities_over_all_digits_sum_to_one() =>
        Gen.Select(Gen.Double[-0.5, 0.5], Gen.Double[-3, 2]).Always(
            (mean, logSd) =>
            {
                double sd = Math.Pow(10, logSd);
                int reach = 3 + (int)(12 * sd);
                double total = Enumerable.Range(-reach, (2 * reach) + 1)
                    .Sum(shown => RoundedNormal.Probability(shown, 1, mean, sd));
                Assert.InRange(total, 1 - 1e-12, 1 + 1e-12);
            },
            iter: 300);

    [Fact]
    public void Probability_falls_as_the_mass_moves_away_even_where_it_underflows() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0.001, 5], Gen.Double[0.05, 3]).Always(
            (mean, further, sd) => Assert.True(
                RoundedNormal.LogProbability(0, 1, mean + further, sd) < RoundedNormal.LogProbability(0, 1, mean, sd)
                || mean + further < 0.5),
            iter: 1000);

    [Theory]
    [InlineData(0.0049, 0.00, 1)]
    [InlineData(0.0051, 0.00, 0)]
    [InlineData(0.005, 0.00, 0.5)]
    [InlineData(0.005, 0.01, 0.5)]
    [InlineData(30.245, 30.24, 0.5)]
    [InlineData(30.245, 30.25, 0.5)]
    public void Without_noise_it_is_pure_rounding_and_a_half_shows_either_way(double mass, double shown, double expected) =>
        Assert.Equal(expected, RoundedNormal.Probability(shown, 0.01, mass, 0));

    [Fact]
    public void Without_noise_an_impossible_value_has_log_probability_minus_infinity() =>
        Assert.Equal(double.NegativeInfinity, RoundedNormal.LogProbability(1, 0.01, 2, 0));

    [Theory]
    [InlineData(double.NaN, 1, 0, 1)]
    [InlineData(0, 0, 0, 1)]
    [InlineData(0, 1, double.PositiveInfinity, 1)]
    [InlineData(0, 1, 0, -1)]
    [InlineData(0, 1, 0, double.NaN)]
    public void Arguments_out_of_range_are_refused(double shown, double step, double mean, double sd) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RoundedNormal.LogProbability(shown, step, mean, sd));

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
