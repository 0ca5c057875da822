using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Measurement.Uncertainty;

/// <summary>The adaptive procedure (JCGM 101:2008, 7.9) and the validation of first order (clause 8).</summary>
public sealed class MonteCarloAdaptiveTests
{
    [Fact]
    public void Numerical_tolerances_are_those_of_the_standards_examples()
    {
        // JCGM 101:2008, 7.9.2, examples: u = 0.00035 and u = 2 with two and one digits; from memory: 0.000005 and 0.5.
        Agree.Relative(1e-12, 0.000005, NumericalTolerance.Of(0.00035, 2));
        Agree.Relative(1e-12, 0.5, NumericalTolerance.Of(2, 1));
        // Rounding carries into a new digit: 0.0998 is 10 · 10^-2 with two digits.
        Agree.Relative(1e-12, 0.005, NumericalTolerance.Of(0.0998, 2));
        Assert.Equal(0, NumericalTolerance.Of(0, 2));
        Assert.Throws<ArgumentOutOfRangeException>(() => NumericalTolerance.Of(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => NumericalTolerance.Of(double.NaN, 1));
    }

    [Fact]
    public void Sequences_are_added_until_the_result_is_stable()
    {
        MonteCarloResult result = MonteCarloTests.Finished(MonteCarlo.RunAdaptive(
            MonteCarloModels.FourNormals(), 2, new MonteCarloSettings(20_000_000)));
        // Sequences of 10 000, at least two; one digit more of u = 2.0 would be another story.
        Assert.Equal(0, result.Draws % 10_000);
        Assert.True(result.Draws >= 20_000);
        // Stable to δ = 0.05, which is twice a standard deviation: 2.5 times δ is passed once in three million.
        Agree.Within(0.125, 0, result.Value);
        Agree.Within(0.125, 2, result.StandardUncertainty);
        Agree.Within(0.125, -3.9199, result.Shortest.Low);
        Agree.Within(0.125, 3.9199, result.Shortest.High);
    }

    [Fact]
    public void More_digits_take_more_draws()
    {
        var settings = new MonteCarloSettings(20_000_000);
        MonteCarloResult one = MonteCarloTests.Finished(MonteCarlo.RunAdaptive(MonteCarloModels.MassCalibration(), 1, settings));
        MonteCarloResult two = MonteCarloTests.Finished(MonteCarlo.RunAdaptive(MonteCarloModels.MassCalibration(), 2, settings));
        Assert.True(two.Draws > 4 * one.Draws, $"{one.Draws} and {two.Draws} draws.");
        Agree.Within(5 * 0.0755 / Math.Sqrt(2.0 * two.Draws), 0.075480, two.StandardUncertainty);
    }

    [Fact]
    public void A_result_that_does_not_settle_says_how_far_it_got()
    {
        var outcome = Assert.IsType<MonteCarloOutcome.NotStable>(MonteCarlo.RunAdaptive(
            MonteCarloModels.MassCalibration(), 3, new MonteCarloSettings(50_000)));
        Assert.Equal(50_000, outcome.Result.Draws);
        Agree.Relative(1e-12, 0.00005, outcome.Tolerance);
        Assert.True(outcome.Reached > outcome.Tolerance);
    }

    [Fact]
    public void Any_number_of_threads_stops_at_the_same_draw()
    {
        MonteCarloResult[] results = [.. new[] { 1, 4 }.Select(threads => MonteCarloTests.Finished(MonteCarlo.RunAdaptive(
            MonteCarloModels.FourNormals(), 1, new MonteCarloSettings(1_000_000, 3, threads))))];
        Assert.Equal(results[0].Draws, results[1].Draws);
        Assert.Equal(results[0].StandardUncertainty, results[1].StandardUncertainty);
        Assert.Equal(results[0].Shortest, results[1].Shortest);
    }

    [Fact]
    public void Failed_draws_end_the_adaptive_procedure_too()
    {
        MeasurementModel model = MonteCarloModels.Of("1 / x", ("x", new NormalInput(0, 0)));
        var outcome = Assert.IsType<MonteCarloOutcome.DrawsFailed>(
            MonteCarlo.RunAdaptive(model, 1, new MonteCarloSettings(100_000)));
        Assert.Equal((1000, 1000), (outcome.Failed, outcome.Examined));
    }

    [Fact]
    public void First_order_is_not_validated_for_the_mass_calibration_and_second_order_is()
    {
        // JCGM 101:2008, table 6 (reference/jcgm101_93_validation.csv): one digit, δ = 0.005.
        MonteCarloResult draws = MonteCarloTests.Finished(MonteCarlo.Run(
            MonteCarloModels.MassCalibration(), new MonteCarloSettings(1_000_000)));
        IReadOnlyList<ReferenceRow> rows = ReferenceTable.Read("jcgm101_93_validation.csv").Rows;
        UncertainValue first = FirstOrder.Propagate(MonteCarloModels.MassCalibration());
        ValidationOutcome firstOrder = Validation.Compare(first, draws, 1);
        Assert.IsType<ValidationOutcome.NotValidated>(firstOrder);
        AssertDifferences(rows[0], firstOrder);

        // GUF2 as published: 1.2340 with the interval 1.0870 to 1.3810.
        ValidationOutcome second = Validation.Compare(new CoverageInterval(1.0870, 1.3810, 0.95), draws, 1);
        Assert.IsType<ValidationOutcome.Validated>(second);
        AssertDifferences(rows[1], second);
    }

    [Fact]
    public void First_order_is_validated_for_a_sum_of_normal_inputs()
    {
        MonteCarloResult draws = MonteCarloTests.Finished(MonteCarlo.Run(
            MonteCarloModels.FourNormals(), new MonteCarloSettings(1_000_000)));
        ValidationOutcome outcome = Validation.Compare(FirstOrder.Propagate(MonteCarloModels.FourNormals()), draws, 2);
        Assert.IsType<ValidationOutcome.Validated>(outcome);
        Agree.Relative(1e-12, 0.05, outcome.Tolerance);
        Assert.Throws<ArgumentException>(() => Validation.Compare(new CoverageInterval(0, 1, 0.9), draws, 1));
    }

    // The published differences carry the noise of the ends of the published shortest interval, 0.0015.
    private static void AssertDifferences(ReferenceRow row, ValidationOutcome outcome)
    {
        Agree.Within(0.003, row.Number("d_low"), outcome.LowDifference);
        Agree.Within(0.003, row.Number("d_high"), outcome.HighDifference);
        Agree.Relative(1e-12, row.Number("tolerance"), outcome.Tolerance);
    }
}
