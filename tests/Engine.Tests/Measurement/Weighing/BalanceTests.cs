using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class BalanceTests
{
    private static readonly double[] Resolutions = [0.1, 0.2, 0.02, 0.05, 0.01, 0.001, 0.0001];

    [Theory]
    [InlineData(0.1, 1)]
    [InlineData(0.2, 1)]
    [InlineData(0.01, 2)]
    [InlineData(0.02, 2)]
    [InlineData(0.05, 2)]
    [InlineData(0.001, 3)]
    [InlineData(0.0001, 4)]
    [InlineData(0.00001, 5)]
    [InlineData(1, 0)]
    [InlineData(20, 0)]
    public void Decimals_shown_follow_from_the_scale_interval(double resolution, int decimals) =>
        Assert.Equal(decimals, new Balance(resolution).Decimals);

    [Theory]
    [InlineData(0)]
    [InlineData(-0.01)]
    [InlineData(0.03)]
    [InlineData(0.0100001)]
    [InlineData(1e-9)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Only_one_two_or_five_times_a_power_of_ten_is_a_scale_interval(double resolution)
    {
        Assert.False(ScaleInterval.IsOne(resolution));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Balance(resolution));
    }

    [Fact]
    public void Reading_of_a_centigram_balance_has_three_quarters_of_a_division() =>
        // sqrt(1/12 + 0.49) = 0.757188 divisions, by hand; the trade's figure is 'about 0.76 d'.
        Assert.Equal(0.00757188, new Balance(0.01).ReadingStandardUncertainty(), 8);

    [Fact]
    public void Resolution_alone_gives_a_division_over_root_twelve() =>
        // JCGM 100:2008, F.2.2.1: u = 0.29 times the resolution.
        Assert.Equal(0.29, new Balance(1, 0).ReadingStandardUncertainty(), 2);

    [Fact]
    public void Zero_error_cancels_in_a_difference()
    {
        var plain = new Balance(0.01);
        var shifted = new Balance(0.01, zeroStandardUncertaintyInGrams: 0.05);
        Assert.Equal(plain.DifferenceStandardUncertainty(), shifted.DifferenceStandardUncertainty());
        Assert.True(shifted.MassStandardUncertainty() > 0.05);
    }

    [Fact]
    public void Linearity_counts_twice_in_a_mass_by_difference()
    {
        // Eurachem/CITAC QUAM:2012, example A2: linearity of 0.15 mg, rectangular, at tare and gross gives 0.12 mg.
        // (0.13 mg in the table includes the repeatability.)
        var balance = new Balance(0.00001, 0, linearityInGrams: 0.00015);
        Assert.Equal(0.00012, balance.DifferenceStandardUncertainty(), 5);
    }

    [Theory]
    [InlineData("30.24")]
    [InlineData("0.00")]
    [InlineData("-0.01")]
    public void Digits_with_all_decimals_are_shown(string reading) =>
        Assert.IsType<ReadingCheck.Shown>(new Balance(0.01).Check(Written(reading)));

    [Theory]
    [InlineData("30.242", "30.242 has more decimals than the balance shows; its display has 2 decimals")]
    [InlineData("30.240", "30.240 has more decimals than the balance shows; its display has 2 decimals")]
    public void More_decimals_than_the_display_has_are_reported(string reading, string reason) =>
        Assert.Equal(new ReadingCheck.TooManyDecimals(2, reason), new Balance(0.01).Check(Written(reading)));

    [Theory]
    [InlineData("34.2", "34.2 lacks zeros at its end; its display has 2 decimals")]
    [InlineData("34", "34 lacks zeros at its end; its display has 2 decimals")]
    public void Zeros_left_out_at_the_end_are_reported(string reading, string reason) =>
        Assert.Equal(new ReadingCheck.ZerosNotWritten(2, reason), new Balance(0.02).Check(Written(reading)));

    [Theory]
    [InlineData(0.02, "30.23")]
    [InlineData(0.05, "30.24")]
    [InlineData(0.2, "30.3")]
    [InlineData(5, "12")]
    public void A_number_between_two_steps_is_never_shown(double resolution, string reading)
    {
        var balance = new Balance(resolution);
        Assert.IsType<ReadingCheck.BetweenSteps>(balance.Check(Written(reading)));
        Assert.Equal(double.NegativeInfinity, balance.LogProbabilityOfDigits(Written(reading), 30));
        Assert.Equal(0, balance.ProbabilityOfDigits(Written(reading), 30));
    }

    [Fact]
    public void Zeros_left_out_do_not_change_the_probability_of_the_number() => Assert.Equal(
        new Balance(0.01).LogProbabilityOfDigits(Written("34.20"), 34.207),
        new Balance(0.01).LogProbabilityOfDigits(Written("34.2"), 34.207));

    [Theory]
    [InlineData(0.01, 30.2449, "30.24")]
    [InlineData(0.01, 30.2, "30.20")]
    [InlineData(0.05, 30.2251, "30.25")]
    [InlineData(0.2, 0.31, "0.4")]
    [InlineData(0.1, -0.25, "-0.3")]
    [InlineData(10, 26, "30")]
    public void Display_rounds_to_the_nearest_step_and_keeps_its_zeros(double resolution, double signal, string shown) =>
        Assert.Equal(shown, new Balance(resolution).Display(signal).ToString());

    [Fact]
    public void What_is_displayed_can_always_be_shown_and_is_the_likeliest_number() =>
        Gen.Select(Gen.Int[0, Resolutions.Length - 1], Gen.Double[-50, 200]).Always(
            (which, mass) =>
            {
                double resolution = Resolutions[which];
                var balance = new Balance(resolution);
                WrittenNumber shown = balance.Display(mass);
                var next = new WrittenNumber(shown.Value + (decimal)resolution);
                Assert.IsType<ReadingCheck.Shown>(balance.Check(shown));
                // Equal where the mass lies half way, but for rounding.
                Assert.True(balance.LogProbabilityOfDigits(shown, mass) > balance.LogProbabilityOfDigits(next, mass) - 1e-9);
            },
            iter: 500);

    [Fact]
    public void Log_probability_is_the_log_of_the_probability_where_that_is_a_number() =>
        Gen.Double[29.9, 30.5].Always(
            mass =>
            {
                var balance = new Balance(0.01);
                double probability = balance.ProbabilityOfDigits(Written("30.24"), mass);
                double log = balance.LogProbabilityOfDigits(Written("30.24"), mass);
                Assert.InRange(log, -1200, 0);
                Assert.True(probability == 0 ? log < -744 : Math.Abs(Math.Log(probability) - log) < 1e-9 || log < -708);
            },
            iter: 500);

    private static WrittenNumber Written(string text) =>
        WrittenNumber.TryParse(text, out WrittenNumber number) ? number : throw new ArgumentException(text, nameof(text));
}
