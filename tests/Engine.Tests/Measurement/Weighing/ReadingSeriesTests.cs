using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class ReadingSeriesTests
{
    private static readonly WrittenNumber Before = new(30.24m);
    private static readonly WrittenNumber After = new(30.38m);

    [Fact]
    public void A_difference_of_two_readings_does_not_depend_on_the_zero()
    {
        var balance = new Balance(0.01, 0.7, linearityInGrams: 0.01, zeroStandardUncertaintyInGrams: 0.1);
        var series = new ReadingSeries(balance);
        UncertainValue gain = series.Mass("after", After) - series.Mass("before", Before);
        Assert.Equal(0.14, gain.Value, 12);
        Assert.Equal(balance.DifferenceStandardUncertainty(), gain.StandardUncertainty, 14);
    }

    [Fact]
    public void A_single_mass_carries_zero_and_linearity()
    {
        var balance = new Balance(0.01, 0.7, linearityInGrams: 0.01, zeroStandardUncertaintyInGrams: 0.1);
        UncertainValue mass = new ReadingSeries(balance).Mass("after", After);
        Assert.Equal(balance.MassStandardUncertainty(), mass.StandardUncertainty, 14);
        Assert.Equal(["after", "zero of the balance", "linearity at after"], mass.Inputs.Select(input => input.Name));
    }

    [Fact]
    public void Readings_on_two_balances_do_not_share_a_zero()
    {
        var balance = new Balance(0.01, 0, zeroStandardUncertaintyInGrams: 0.03);
        UncertainValue gain = new ReadingSeries(balance).Mass("after", After) - new ReadingSeries(balance).Mass("before", Before);
        // Two zeros of 0.03 g and two roundings of 0.01/sqrt(12) g: sqrt(2 (0.0009 + 0.00000833)) = 0.042622, by hand.
        Assert.Equal(0.042622, gain.StandardUncertainty, 6);
    }

    [Fact]
    public void Readings_are_corrected_by_what_the_check_weights_said()
    {
        var balance = new Balance(0.01);
        BalanceCorrection correction = BalanceCorrection.From(
            balance, [new CheckWeighing(0, 0, new WrittenNumber(0.02m)), new CheckWeighing(100, 0, new WrittenNumber(100.12m))]);
        var series = new ReadingSeries(balance, correction);
        // Shift 0.02 g and 0.1 % of the load: 30.24 - 0.02 - 0.03024 = 30.18976, by hand.
        UncertainValue before = series.Mass("before", Before);
        Assert.Equal(30.18976, before.Value, 12);
        Assert.Equal(0.14 - 0.00014, (series.Mass("after", After) - before).Value, 12);
    }
}
