using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>Quantities from readings of clock, ammeter and thermometer: propagation of uncertainty by JCGM 100:2008, worked out here from
/// the numbers in the files.</summary>
public class GaugeEstimateTests
{
    private static readonly (string, string)[] Run =
        [("anodeBefore", "12.83"), ("cathodeBefore", "10.47"), ("current", "0.38"), ("time", "1260"), ("cathodeAfter", "10.61"), ("anodeAfter", "12.67")];

    private static readonly (string, string)[] Burn =
        [("volume", "100"), ("before", "143.27"), ("start", "19.5"), ("end", "43.0"), ("after", "142.53")];

    // JCGM 100:2008, 5.1.6, relative: steps of 0.01 A and 1 s rectangular (F.2.2.1), spreads 0.004 A and 1 s, scale 2 % rectangular (4.3.7).
    [Fact]
    public void The_charge_carries_spread_step_and_scale_of_its_instruments()
    {
        QuantityEstimate charge = GaugeBench.Find(GaugeBench.Electrolysis, GaugeBench.Group(GaugeBench.Electrolysis, Run), "chargePassed");
        double ofCurrent = ((0.004 * 0.004) + (0.01 * 0.01 / 12)) / (0.38 * 0.38);
        double ofTime = (1 + (1.0 / 12)) / (1260.0 * 1260);
        double ofScale = 0.02 * 0.02 / 3;

        Assert.Equal(478.8, charge.Value, 1e-9);
        Assert.Equal(478.8 * Math.Sqrt(ofCurrent + ofTime + ofScale), charge.StandardUncertainty, 1e-9);
        Assert.Equal(1, charge.Budget.Sum(b => b.Share), 1e-9);
        Assert.Contains(charge.Budget, b => b.Source == "scale of ampere" && Math.Abs(b.Contribution - (478.8 * 0.02 / Math.Sqrt(3))) < 1e-9);
    }

    // 0.5 °C of the thermometer cancel in the rise, and stay in a single temperature.
    [Fact]
    public void A_tolerance_cancels_in_a_difference()
    {
        QuantityEstimate rise = GaugeBench.Find(GaugeBench.Combustion, GaugeBench.Group(GaugeBench.Combustion, Burn), "rise");

        Assert.Equal(Math.Sqrt(2 * ((0.3 * 0.3) + (0.5 * 0.5 / 12))), rise.StandardUncertainty, 1e-12);
        Assert.DoesNotContain(rise.Budget, b => b.Source.StartsWith("instrument", StringComparison.Ordinal));
        Assert.Equal(1, rise.Decimals);

        Practical one = GaugeBench.With(GaugeBench.Combustion, ("formula: end - start }", "formula: end }"));
        Assert.Equal(
            Math.Sqrt((0.3 * 0.3) + (0.5 * 0.5 / 12) + (0.5 * 0.5 / 3)),
            GaugeBench.Find(one, GaugeBench.Group(one, Burn), "rise").StandardUncertainty, 1e-12);
    }

    // 4.18 kJ for 10 K in 100 cm³: the molar mass from the abridged atomic weights (IUPAC 2021), 46.069.
    [Fact]
    public void The_enthalpy_follows_from_volume_rise_and_mass()
    {
        QuantityEstimate enthalpy = GaugeBench.Find(GaugeBench.Combustion, GaugeBench.Group(GaugeBench.Combustion, Burn), "enthalpy");

        Assert.Equal(-(100 * 4.18 * 23.5 / 1000) / (0.74 / 46.069), enthalpy.Value, 0.05);
    }

    [Fact]
    public void A_perfect_instrument_leaves_nothing_and_a_current_twice_as_large_carries_twice_the_charge()
    {
        Practical perfect = GaugeBench.With(
            GaugeBench.Electrolysis, ("spread: 0.004", "spread: 0"), ("scaleTolerance: 0.02", "scaleTolerance: 0"), ("resolution: 0.01\n", "resolution: 0.00001\n"),
            ("resolution: 1\n    spread: 1", "resolution: 0.001\n    spread: 0"));
        Gen.Select(Gen.Int[5, 50], Gen.Int[600, 2400]).Always((hundredths, seconds) =>
        {
            QuantityEstimate one = Charge(hundredths, seconds);
            Assert.Equal(hundredths * seconds / 100.0, one.Value, 1e-9);
            Assert.InRange(one.StandardUncertainty / one.Value, 0, 1e-3);
            Assert.Equal(2 * one.Value, Charge(2 * hundredths, seconds).Value, 1e-9);
        });

        QuantityEstimate Charge(int hundredths, int seconds) => GaugeBench.Find(
            perfect, GaugeBench.Group(perfect, ("current", $"{hundredths / 100}.{hundredths % 100:00}"), ("time", $"{seconds}")), "chargePassed", GaugeBench.Balance);
    }

    // A gauge that is set anew is an unknown of its own: neither temperature says anything of the other.
    [Fact]
    public void Each_setting_of_a_gauge_is_an_unknown_of_its_own()
    {
        Identifiability without = Identifiability.Of(GaugeBench.Combustion, ["volume", "before", "end", "after"], []);
        Identifiability with = Identifiability.Of(GaugeBench.Combustion, ["volume", "before", "start", "end", "after"], []);

        Assert.Equal(["fuelBurnt", "massChange"], without.Determined.Select(q => q.Id));
        Assert.Equal("start", Assert.Single(without.Undetermined.First(m => m.Quantity.Id == "enthalpy").Readings).Id);
        Assert.Empty(with.Undetermined);
    }

    [Fact]
    public void The_order_in_which_readings_were_typed_does_not_matter()
    {
        GroupReadings there = GaugeBench.Group(GaugeBench.Combustion, Burn);
        GroupReadings back = GaugeBench.Group(GaugeBench.Combustion, [.. Burn.Reverse()]);
        QuantityEstimate one = GaugeBench.Find(GaugeBench.Combustion, there, "enthalpy");
        QuantityEstimate other = GaugeBench.Find(GaugeBench.Combustion, back, "enthalpy");

        Assert.Equal(one.Value, other.Value, 1e-9);
        Assert.Equal(one.StandardUncertainty, other.StandardUncertainty, 1e-9);
    }

    // What was written to whole degrees was read to whole degrees, whatever the file says of the thermometer.
    [Fact]
    public void Digits_as_written_set_the_step_where_they_are_fewer()
    {
        var balance = new BalanceReport(
            new BalanceOptions(0.01m), new Dictionary<string, decimal>(), new Dictionary<string, decimal> { ["start"] = 1, ["end"] = 1 });

        Assert.Equal(
            Math.Sqrt(2 * ((0.3 * 0.3) + (1.0 / 12))),
            GaugeBench.Find(GaugeBench.Combustion, GaugeBench.Group(GaugeBench.Combustion, Burn), "rise", balance).StandardUncertainty, 1e-12);
    }
}
