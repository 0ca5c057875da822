using Calx.Chemistry.Amounts;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;

namespace Calx.Engine.Tests.Chemistry.Amounts;

public class WaterOfCrystallisationTests
{
    // Percentage of water as handbooks print it (from memory), good to 0.2.
    [Theory]
    [InlineData("CuSO4", 159.609, 36.08, 5)]
    [InlineData("MgSO4", 120.368, 51.17, 7)]
    [InlineData("BaCl2", 208.233, 14.75, 2)]
    [InlineData("Na2CO3", 105.988, 62.96, 10)]
    [InlineData("CaSO4", 136.134, 20.93, 2)]
    public void Water_content_of_a_handbook_leads_to_its_hydrate(string salt, double molarMass, double percent, int water)
    {
        UncertainValue lost = UncertainValue.Of("water", percent, 0.2);
        var ranked = Ranked(WaterOfCrystallisation.Candidates(
            new WeighedPart(salt, UncertainValue.Exact(molarMass), 100 - lost), Water(lost)));
        Assert.Equal([1, water], ranked.Candidates[0].Numbers);
        Assert.Equal($"{salt}·{water}H2O", ranked.Candidates[0].Formula);
        Assert.True(ranked.Candidates[0].Probability > 0.95);
    }

    [Fact]
    public void A_school_sample_of_copper_sulfate_gives_x_of_4_8_and_the_pentahydrate()
    {
        // Dish 25.00, with hydrate 27.50, with residue 26.62 g; 159.6 and 18.0 g/mol: x = 0.048889/0.0101504 = 4.8165 (by hand).
        (WeighedPart salt, WeighedPart water) = Dish(0.01, 25.00m, 27.50m, 26.62m);
        UncertainValue x = WaterOfCrystallisation.Ratio(salt, water);
        Assert.Equal(4.8165, x.Value, 4);
        // By hand: x (u/w) with w = 0.88, a = 1.62, u = 0.00757188: dx/d(hydrate) = x/w, dx/d(residue) = -x(1/w + 1/a),
        // dx/d(dish) = x/a; u(x) = 4.8165 * 0.00757188 * sqrt(1.2913 + 3.0795 + 0.3810) = 0.0795.
        Assert.Equal(0.0795, x.StandardUncertainty, 4);
        Assert.Equal("CuSO4·5H2O", Ranked(WaterOfCrystallisation.Candidates(salt, water)).Candidates[0].Formula);
    }

    [Fact]
    public void A_coarse_balance_leaves_the_hydrate_open()
    {
        (WeighedPart salt, WeighedPart water) = Dish(0.1, 25.0m, 27.5m, 26.6m);
        var ranked = Ranked(WaterOfCrystallisation.Candidates(salt, water));
        Assert.True(ranked.Likeliest().Count >= 3);
        Assert.Equal(1, ranked.NoneOfThese + ranked.Candidates.Sum(found => found.Probability), 12);
    }

    [Fact]
    public void Hardly_any_water_lost_means_the_salt_may_hold_none()
    {
        (WeighedPart salt, WeighedPart water) = Dish(0.01, 25.00m, 27.50m, 27.49m);
        Assert.Equal("CuSO4", Ranked(WaterOfCrystallisation.Candidates(salt, water)).Candidates[0].Formula);
    }

    [Fact]
    public void A_residue_heavier_than_the_hydrate_gives_no_formula()
    {
        (WeighedPart salt, WeighedPart water) = Dish(0.01, 25.00m, 27.50m, 27.52m);
        Assert.Equal(
            new FormulaRanking.Undetermined(
                "the mass of H2O comes out negative (-0.02 g); check the readings it is found from"),
            WaterOfCrystallisation.Candidates(salt, water));
    }

    private static (WeighedPart Salt, WeighedPart Water) Dish(double resolution, decimal dish, decimal hydrate, decimal residue)
    {
        var series = new ReadingSeries(new Balance(resolution));
        UncertainValue last = series.Mass("dish and residue", new WrittenNumber(residue));
        return (
            new WeighedPart("CuSO4", UncertainValue.Exact(159.6), last - series.Mass("dish", new WrittenNumber(dish))),
            Water(series.Mass("dish and hydrate", new WrittenNumber(hydrate)) - last, 18.0));
    }

    private static WeighedPart Water(UncertainValue mass, double molarMass = 18.015) =>
        new("H2O", UncertainValue.Exact(molarMass), mass);

    private static FormulaRanking.Ranked Ranked(FormulaRanking ranking) => Assert.IsType<FormulaRanking.Ranked>(ranking);
}
