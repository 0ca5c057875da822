using Calx.Measurement.Weighing;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>What the uses of a practical make of clock, ammeter and thermometer.</summary>
public class GaugeUseTests
{
    private static readonly CancellationToken Stop = TestContext.Current.CancellationToken;

    // Faraday's law with the file's laws: 0.40 A for 1200 s; the current needs 0.15 g / 0.158 g of the time for 0.15 g.
    [Fact]
    public void Another_sample_is_another_time_of_the_same_current()
    {
        var circumstances = new Circumstances(GaugeBench.Electrolysis);
        Prediction half = Prediction.Of(circumstances, GaugeBench.Weights, new SimulationPlan(1, sampleInGrams: 0.079), draws: 400, cancellation: Stop);

        Assert.Equal(600, half.Readings.Single(r => r.Weighing.Reading == "time").Written.Median, 15.0);
        Assert.Equal(0.40, half.Readings.Single(r => r.Weighing.Reading == "current").Written.Median, 0.011);
        Assert.Equal(0, half.Readings.Single(r => r.Weighing.Reading == "time").Decimals);
        Assert.All(half.Quantities, q => Assert.NotNull(q.Value));
    }

    // 30 to 60 % of the book value is normal (a worked case of 53 %, a public report; otherwise common practice, no source).
    [Fact]
    public void Half_of_the_groups_catch_what_classes_catch()
    {
        Prediction usual = Prediction.Of(new Circumstances(GaugeBench.Combustion), GaugeBench.Weights, new SimulationPlan(1), draws: 400, cancellation: Stop);
        PredictedValue caught = usual.Quantities.Single(q => q.Quantity.Id == "caughtShare").Value!;

        Assert.InRange(caught.Median, 30, 60);
        Assert.True(caught.Most.High < 100);
    }

    [Fact]
    public void Another_zero_of_a_balance_moves_no_clock()
    {
        SimulatedClass drawn = SimulatedClass.Draw(
            new Circumstances(GaugeBench.Electrolysis), GaugeBench.Weights, new SimulationPlan(20, new Balance(0.001), cause: "zero-shifted", notesObservations: false), 3, cancellation: Stop);

        Assert.All(drawn.Groups, g => Assert.All(g.Readings.Where(r => !GaugeBench.Electrolysis.Reading(r.Weighing.Reading).IsWeighing), r => Assert.Equal(0, r.ShiftInGrams)));
        Assert.All(drawn.Groups, g => Assert.Contains(g.Readings, r => r.ShiftInGrams != 0));
    }

    [Fact]
    public void The_perfect_run_gives_what_theory_says()
    {
        // tests/reference/scripts/shelf_gauges.py, from the abridged atomic weights (IUPAC 2021) and the Faraday constant (CODATA 2018).
        Assert.Equal(0.32930394, new IdealRun(GaugeBench.Electrolysis, GaugeBench.Weights).Accepted("perCoulomb"), 2e-5);
        Assert.Equal(2, new IdealRun(GaugeBench.Electrolysis, GaugeBench.Weights).Accepted("electrons"), 1e-4);
        Assert.Equal(-1367, new IdealRun(GaugeBench.Combustion, GaugeBench.Weights).Accepted("enthalpy"), 0.05);
    }
}
