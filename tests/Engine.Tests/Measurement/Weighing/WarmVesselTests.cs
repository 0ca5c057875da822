using Calx.Measurement.Weighing;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class WarmVesselTests
{
    [Theory]
    [InlineData(0.01, 26)]
    [InlineData(0.001, 2.6)]
    public void Half_a_division_bounds_the_warmth_at_which_to_weigh(double resolution, double kelvins) =>
        // 0.5 d over Blade's 0.19 mg/K: 26.3 K and 2.63 K.
        Assert.Equal(kelvins, WarmVessel.ExcessForHalfDivision(new Balance(resolution)), kelvins * 0.02);

    [Fact]
    public void A_warm_vessel_reads_low_and_a_cold_one_high()
    {
        // E. Blade: at most 0.19 mg per kelvin for a 17 g porcelain crucible.
        Assert.Equal(0.0095, WarmVessel.LowReadingInGrams(50), 12);
        Assert.Equal(-0.00095, WarmVessel.LowReadingInGrams(-5), 12);
    }

    [Fact]
    public void Warm_air_in_a_crucible_weighs_a_fraction_of_a_milligram_less() =>
        // 15 cm3 of 1.2 mg/cm3, one 294th less per kelvin: 0.061 mg.
        Assert.Equal(0.061e-3, WarmVessel.LightAirInGrams(15, 1), 6);
}
