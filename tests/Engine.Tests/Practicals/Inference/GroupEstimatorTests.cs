using System.Globalization;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Inference;

public class GroupEstimatorTests
{
    private static readonly BalanceReport TwoDecimals =
        new(BalanceOptions.NothingGiven, new Dictionary<string, decimal> { ["after"] = 0.01m });

    private readonly GroupEstimator estimator = new(Given.Magnesium, TwoDecimals, Given.Weights);

    // Worked by hand from the readings 30.00, 30.24, 30.38 with Ar 24.305 and 15.999: 0.24 g, 0.14 g,
    // n(O)/n(Mg) = (0.14/15.999)/(0.24/24.305) = 0.88619.
    [Theory]
    [InlineData("sampleMass", 0.24)]
    [InlineData("massChange", 0.14)]
    [InlineData("massRatio", 1.583333)]
    [InlineData("moleRatio", 0.886189)]
    public void Quantities_follow_from_the_readings(string id, double expected) =>
        Assert.Equal(expected, Find(Worked(), id).Value, 1e-4);

    [Fact]
    public void A_reheat_replaces_the_weighing_before_it()
    {
        GroupReadings group = Given.Group("1", ("empty", "30.00"), ("before", "30.24"), ("after", "30.34"), ("after2", "30.38"));

        Assert.Equal(0.14, Find(group, "massChange").Value, 1e-12);
    }

    // Table A4 of the trade's facts, computed there by the first-order formula: 12 % for 0.20 g at 0.01 g.
    [Theory]
    [InlineData("30.10", "30.1658", 24)]
    [InlineData("30.20", "30.3317", 12)]
    [InlineData("30.30", "30.4975", 8)]
    public void Relative_uncertainty_of_the_ratio_is_set_by_the_sample(string before, string after, double percent)
    {
        QuantityEstimate ratio = Find(Given.Group("1", ("empty", "30.00"), ("before", before), ("after", after)), "moleRatio");

        Assert.Equal(percent, 100 * ratio.StandardUncertainty / ratio.Value, 0.5);
    }

    [Fact]
    public void The_budget_agrees_with_the_tree_evaluated_over_uncertain_values() =>
        Gen.Select(Gen.Int[20, 40], Gen.Int[5, 60], Gen.Int[1, 90]).Always((grams, sample, gain) =>
        {
            // One estimator an iteration: it keeps what it worked out and is not for several threads.
            var estimator = new GroupEstimator(Given.Magnesium, TwoDecimals, Given.Weights);
            decimal empty = grams + 0.37m;
            decimal before = empty + sample / 100m;
            decimal after = before + gain / 100m;
            GroupReadings group = Given.Group(
                "1", ("empty", $"{empty}"), ("before", $"{before}"), ("after", $"{after}"));
            double u = estimator.UncertaintyOf(group.Readings[0]);
            var inputs = group.Readings.ToDictionary(r => r.Id, r => UncertainValue.Of(r.Id, r.Value.AsDouble, u));
            foreach (QuantityEstimate found in estimator.Estimate(group).OfType<QuantityEstimate>())
            {
                UncertainValue judge = found.Quantity.Formula.Evaluate(
                    name => inputs[name], text => Formula.Parse(text).Value.MolarMass(Given.Weights));
                Assert.Equal(judge.Value, found.Value, 1e-9 * Math.Abs(judge.Value));
                Assert.Equal(judge.StandardUncertainty, found.StandardUncertainty, 1e-9 * judge.StandardUncertainty);
                Assert.Equal(1, found.Budget.Sum(line => line.Share), 1e-9);
            }
        });

    // Fieller's theorem in its closed form for a ratio of two correlated normals (J. R. Stat. Soc. B 16 (1954) 175).
    [Theory]
    [InlineData("30.24", "30.38")]
    [InlineData("30.10", "30.17")]
    [InlineData("30.06", "30.10")]
    [InlineData("30.03", "30.05")]
    [InlineData("30.022", "30.04")]
    [InlineData("30.03", "30.03")]
    [InlineData("30.03", "29.98")]
    public void The_interval_of_the_mass_ratio_is_Fiellers(string before, string after)
    {
        GroupReadings group = Given.Group("1", ("empty", "30.00"), ("before", before), ("after", after));
        double u2 = Math.Pow(estimator.UncertaintyOf(group.Readings[0]), 2);
        double b = Find(group, "sampleMass").Value;
        double a = Find(group, "productMass").Value;
        double k2 = 1.959963984540054 * 1.959963984540054;
        double saa = 2 * u2, sbb = 2 * u2, sab = u2;
        double denominator = b * b - k2 * sbb;
        double root = Math.Sqrt(Math.Pow(a * b - k2 * sab, 2) - denominator * (a * a - k2 * saa));

        CoverageInterval interval = Find(group, "massRatio").Interval!.Value;

        Assert.Equal((a * b - k2 * sab - root) / denominator, interval.Low, 1e-8);
        Assert.Equal((a * b - k2 * sab + root) / denominator, interval.High, 1e-8);
    }

    // Coverage by brute force, where first-order intervals lose it: 0.06 g of sample on a two-decimal balance. Readings are
    // drawn normal with the stated uncertainty; Fieller's coverage is then exact.
    [Fact]
    public void The_interval_of_a_small_sample_holds_the_truth_95_times_in_100()
    {
        int draws = LongProofs.Cases(sample: 4_000, inFull: 200_000);
        double u = estimator.UncertaintyOf(Worked().Readings[0]);
        var stream = new Calx.Measurement.Distributions.RandomStream(11, 0);
        int held = 0;
        for (int i = 0; i < draws; i++)
        {
            string[] digits = [.. new[] { 30.00, 30.06, 30.0995 }.Select(m => (m + (u * stream.NextNormal())).ToString("F6", CultureInfo.InvariantCulture))];
            QuantityEstimate ratio = Find(Given.Group("1", ("empty", digits[0]), ("before", digits[1]), ("after", digits[2])), "massRatio");
            // No interval is the whole line, which holds everything.
            held += ratio.Interval?.Contains(0.0995 / 0.06) ?? true ? 1 : 0;
        }

        Assert.Equal(0.95, held / (double)draws, LongProofs.ThreeErrors(0.95, draws));
    }

    [Fact]
    public void A_sample_lost_in_the_balances_uncertainty_has_no_interval()
    {
        QuantityEstimate ratio = Find(Given.Group("1", ("empty", "30.00"), ("before", "30.02"), ("after", "30.03")), "moleRatio");

        Assert.Null(ratio.Interval);
    }

    [Fact]
    public void No_sample_at_all_is_said_in_words()
    {
        QuantityResult ratio = estimator.Estimate(Given.Group("1", ("empty", "30.00"), ("before", "30.00"), ("after", "30.03")))
            .Single(r => r.Quantity.Id == "moleRatio");

        Assert.Contains("divides by zero", Assert.IsType<QuantityNotFound>(ratio).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_that_contradicts_the_readings_is_found()
    {
        GroupReadings group = Given.Group(
            "1", ("empty", "30.00"), ("before", "30.24"), ("after", "30.38"), ("sampleColumn", "0.42"));

        string sentence = Assert.Single(estimator.Contradictions(group));
        Assert.Contains("0.42", sentence, StringComparison.Ordinal);
        Assert.Contains("0.24 g", sentence, StringComparison.Ordinal);
        Assert.Equal(0.24, Find(group, "sampleMass").Value, 1e-9);
    }

    [Fact]
    public void Subtracted_columns_alone_give_the_ratio()
    {
        QuantityEstimate ratio = Find(Given.Group("1", ("sampleColumn", "0.24"), ("gainColumn", "0.14")), "moleRatio");

        Assert.Equal(0.886189, ratio.Value, 1e-4);
    }

    private static GroupReadings Worked() => Given.Group("1", ("empty", "30.00"), ("before", "30.24"), ("after", "30.38"));

    private QuantityEstimate Find(GroupReadings group, string id) =>
        Assert.IsType<QuantityEstimate>(estimator.Estimate(group).Single(r => r.Quantity.Id == id));
}
