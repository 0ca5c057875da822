using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;

namespace Calx.Engine.Tests.Measurement.Weighing;

public class UncertainAirTests
{
    private static readonly UncertainInput Temperature = new("temperature", 20, 0.2);
    private static readonly UncertainInput Pressure = new("pressure", 101_325, 50);
    private static readonly UncertainInput Humidity = new("humidity", 0.5, 0.05);

    private static UncertainValue Density() => UncertainAir.Density(
        UncertainValue.Of(Temperature), UncertainValue.Of(Pressure), UncertainValue.Of(Humidity), UncertainValue.Exact(0.0004));

    [Fact]
    public void Sensitivities_are_those_known_to_mass_metrology()
    {
        UncertainValue density = Density();
        // OIML R 111-1:2004, C.6.3: 1e-5 per Pa, -3.4e-3 per K, -1e-2 per unit of humidity, each times the density and
        // rounded (from memory); Picard et al. 2008 has -4e-3 and -9e-3.
        Assert.Equal(1e-5, density.SensitivityTo(Pressure) / density.Value, 1e-6);
        Assert.InRange(density.SensitivityTo(Temperature) / density.Value, -4.2e-3, -3.4e-3);
        Assert.InRange(density.SensitivityTo(Humidity) / density.Value, -1e-2, -8e-3);
    }

    [Fact]
    public void The_formula_itself_bounds_how_well_the_density_can_be_known()
    {
        UncertainValue perfect = UncertainAir.Density(
            UncertainValue.Exact(20), UncertainValue.Exact(101_325), UncertainValue.Exact(0), UncertainValue.Exact(0));
        Assert.Equal(22e-6, perfect.RelativeStandardUncertainty, 12);
    }

    [Fact]
    public void Buoyancy_with_uncertainty_has_the_same_value_as_without()
    {
        UncertainValue mass = UncertainAir.TrueMass(
            UncertainValue.Exact(2.32),
            UncertainValue.Of("density of the liquid", 920, 10),
            UncertainValue.Of("density of the air", 1.2, 0.05),
            UncertainValue.Exact(8000));
        Assert.Equal(Buoyancy.TrueMass(2.32, 920), mass.Value, 12);
        // dm/d(air) = 2.32 (1/920 - 1/8000) g per kg/m3 nearly, times 0.05: 0.112 mg; the density adds 0.033 mg, by hand.
        Assert.Equal(0.0001163, mass.StandardUncertainty, 5e-7);
    }
}
