using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>What a file with other instruments than a balance is told: the place, the reason and the cure.</summary>
public class GaugeFileTests
{
    [Theory]
    [InlineData("    resolution: 0.01\n", "", "a reading lacks the key 'resolution': 1, 2 or 5 times a power of ten")]
    [InlineData("    resolution: 0.01\n", "    resolution: 0.03\n", "expected 1, 2 or 5 times a power of ten")]
    [InlineData("    spread: 0.004\n", "    spread: -1\n", "expected a number from 0")]
    [InlineData("    unit: A\n", "    unit: V\n", "'V' is no unit of this instrument; expected A or mA")]
    [InlineData("    unit: A\n", "    unit: mA\n", "is read in mA, but the gauge 'ampere' is in A")]
    [InlineData("    instrument: ammeter\n", "    instrument: ammeter\n    pan: { parts: [anode] }\n", "only a balance has a pan")]
    [InlineData("gain: { reading: cathodeAfter,", "gain: { reading: time,", "befalls a weighing, and 'time' is none")]
    [InlineData("difference: (cathodeAfter - cathodeBefore) -", "difference: cathodeAfter * (cathodeAfter - cathodeBefore) -", "the effect of one weighing depends on another")]
    public void A_fault_says_what_is_wrong_and_what_was_expected(string old, string with, string said) =>
        Assert.Contains(GaugeBench.Read(GaugeBench.Electrolysis, (old, with)).Faults, f => f.ToString().Contains(said, StringComparison.Ordinal));

    [Fact]
    public void One_thermometer_has_one_tolerance()
    {
        string text = GaugeBench.Combustion.SourceText;
        int last = text.LastIndexOf("tolerance: 0.5", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(text[..last] + "tolerance: 1" + text[(last + "tolerance: 0.5".Length)..], "x.yaml");

        Assert.Contains(reading.Faults, f => f.ToString().Contains("show the same gauge, so one instrument takes both", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("burns: ethanol, filledByTechnician: true", "filledByTechnician: false", "is a flammable liquid, and the kit has a naked flame")]
    [InlineData("filledByTechnician: true", "filledByTechnician: false", "only from a burner that the technician has filled and capped")]
    [InlineData("  - { id: mat, label: heat-resistant mat, perGroup: 1 }", "  - { id: mat, label: gas burner, perGroup: 1, flame: true }", "is a flammable liquid, and the kit has a naked flame (gas burner")]
    public void A_flammable_liquid_is_burnt_only_in_its_own_filled_burner(string old, string with, string said) =>
        Assert.Contains(GaugeBench.Read(GaugeBench.Combustion, (old, with)).Faults, f => f.ToString().Contains(said, StringComparison.Ordinal));

    [Fact]
    public void Methanol_is_not_burnt_in_class() => Assert.Contains(
        GaugeBench.Read(GaugeBench.Combustion, ("C2H6O + 3O2 -> 2CO2 + 3H2O", "2CH4O + 3O2 -> 2CO2 + 4H2O"), ("C2H6O", "CH4O")).Faults,
        f => f.ToString().Contains("take ethanol", StringComparison.Ordinal));
}
