using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Engine.Tests.Practicals.Series;

/// <summary>Invented masses against time, held against the rate law written out here.</summary>
public sealed class SeriesDrawTests
{
    // CO2 and HCl by IUPAC 2021 abridged weights; draught 4 mg and drift as the practical says, so that 30 mg are far off.
    private const double CarbonDioxide = 44.009;
    private const double HydrogenChloride = 36.458;

    [Theory]
    [InlineData("marble-and-acid", HydrogenChloride, CarbonDioxide)]
    [InlineData("hydrogen-peroxide", 34.014, 31.998)]
    public void Points_follow_the_law_with_the_numbers_that_were_drawn(string id, double dissolved, double gas)
    {
        SimulatedClass drawn = Draw(id, new SimulationPlan(20, new Balance(0.001)));
        foreach (SimulatedGroup group in drawn.Groups.Where(g => g.Truth.Faults == FaultSet.None))
        {
            double Number(string name) => group.Truth.Values[drawn.Numbers.ToList().IndexOf(name)];
            double whole = Number("sample") * Number("strength") / dissolved / 2 * gas;
            double held = drawn.Numbers.Contains("held") ? Number("held") : 0;
            double first = group.Series!.Points[0].Value.AsDouble;
            foreach (var point in group.Series.Points)
            {
                double gone = 1 - Math.Pow(2, -point.Time.AsDouble / Number("half"));
                double vapour = Number("vapour") * Number("sample") * gone;
                Assert.InRange(first - point.Value.AsDouble, Math.Max(0, (whole * gone) - held) + vapour - 0.03, Math.Max(0, (whole * gone) - held) + vapour + 0.03);
            }
        }
    }

    [Fact]
    public void The_same_seed_gives_the_same_points_for_any_number_of_threads()
    {
        string Written(int threads) => string.Join(' ', SimulatedClass.Draw(
            new Circumstances(Marble.Practical), AtomicWeights.Iupac2024, new SimulationPlan(6), seed: 5, threads).Groups
            .SelectMany(g => g.Series!.Points.Select(p => p.Value)));

        Assert.Equal(Written(1), Written(2));
    }

    [Fact]
    public void First_and_last_point_are_the_groups_own_readings()
    {
        Assert.All(Draw("marble-and-acid", new SimulationPlan(10)).Groups, group =>
        {
            Assert.Equal(group.Readings.First(r => r.Weighing.Reading == "start").Written, group.Series!.Points[0].Value);
            Assert.Equal(group.Readings.First(r => r.Weighing.Reading == "end").Written, group.Series.Points[^1].Value);
            Assert.Equal(21, group.Series.Points.Count);
        });
    }

    private static SimulatedClass Draw(string id, SimulationPlan plan) =>
        SimulatedClass.Draw(new Circumstances(BuiltInPracticals.Find(id)!).Without(new HashSet<string> { "misread" }), AtomicWeights.Iupac2024, plan, seed: 3);
}
