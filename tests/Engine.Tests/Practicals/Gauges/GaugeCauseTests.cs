using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;
using Calx.Tests;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>Groups with clock, ammeter and thermometer drawn from the model, and the model read backwards.</summary>
public class GaugeCauseTests(ITestOutputHelper figures)
{
    private static readonly int Groups = LongProofs.Cases(30, 4000);

    /// <summary>Chance of a true program failing here: the bounds are wide in the short run.</summary>
    public static TheoryData<string> Ids => ["copper-electrolysis", "alcohol-combustion"];

    /// <summary>Simulation-based calibration (S. Talts and others, 2018): causes come true as often as they are probable.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void Forward_draws_and_posterior_agree(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        var circumstances = new Circumstances(practical);
        var model = new CauseModel(circumstances, GaugeBench.Weights, density: LongProofs.Cases(25, 100) / 100.0);
        var drawer = new GroupDrawer(circumstances, GaugeBench.Weights, new SimulationPlan(Groups, notesObservations: false));
        IReadOnlyList<AmountPrior> amounts = model.UsualAmounts(1);
        var judged = new (double Probability, double True)[Groups][];
        Parallel.For(0, Groups, g =>
        {
            SimulatedGroup group = drawer.Draw(2024, (ulong)g, g + 1);
            CausePosterior posterior = model.Of(group.HandedIn(), GaugeBench.Balance, amounts, silenceCounts: false);
            judged[g] = [.. posterior.Causes.Select(c => (c.Probability, True(group, c.Cause)))];
        });
        (double Probability, double True)[] all = [.. judged.SelectMany(j => j)];
        double error = all.GroupBy(c => (int)Math.Min(9, c.Probability * 10))
            .Sum(bin => bin.Count() / (double)all.Length * Math.Abs(bin.Average(c => c.Probability) - bin.Average(c => c.True)));
        double score = judged.Average(j => j.Sum(c => c.True * Math.Log(Math.Max(c.Probability, 1e-9))));
        figures.WriteLine($"{id}: {Groups} groups, expected calibration error {error:F4}, mean log score {score:F3}");
        Assert.InRange(error, 0, LongProofs.Cases(90, 30) / 1000.0);
        Assert.InRange(score, -1.6, 0);
    }

    // 1185 s with its middle digits changed: no other reading of the group allows it.
    [Fact]
    public void A_time_written_down_wrongly_is_found_and_the_digits_are_told()
    {
        Practical practical = GaugeBench.Electrolysis;
        CausePosterior posterior = Judged(practical, ("anodeBefore", "11.80"), ("cathodeBefore", "12.42"), ("current", "0.41"), ("time", "1815"), ("cathodeAfter", "12.57"), ("anodeAfter", "11.64"));
        CauseProbability first = posterior.Causes[0];

        Assert.Equal("misread", first.Cause);
        Assert.Equal("time", first.Reading);
        Assert.True(first.Probability > 0.9);
    }

    [Fact]
    public void Heat_that_went_past_the_can_is_named_and_a_middling_group_is_not()
    {
        Practical practical = GaugeBench.Combustion;
        CausePosterior low = Judged(practical, ("volume", "100"), ("before", "143.27"), ("start", "20.0"), ("end", "30.0"), ("after", "142.47"));
        CausePosterior usual = Judged(practical, ("volume", "100"), ("before", "143.27"), ("start", "20.0"), ("end", "47.5"), ("after", "142.47"));

        Assert.Equal("heat-lost", low.Causes[0].Cause);
        Assert.Equal("as-expected", usual.Causes[0].Cause);
    }

    [Fact]
    public void The_order_of_the_readings_changes_no_probability()
    {
        (string, string)[] readings = [("volume", "101"), ("before", "143.27"), ("start", "20.0"), ("end", "36.0"), ("after", "142.47")];
        CausePosterior one = Judged(GaugeBench.Combustion, readings);
        CausePosterior other = Judged(GaugeBench.Combustion, [.. readings.Reverse()]);

        Assert.All(one.Causes, c => Assert.Equal(c.Probability, other.Causes.Single(o => o.Cause == c.Cause).Probability, 1e-12));
    }

    /// <summary>What the meter shows scatters by its scale, spread and step, as the file says; JCGM 100:2008, 4.3.7 for the rectangular law.</summary>
    [Fact]
    public void Drawn_readings_scatter_as_their_instrument_does()
    {
        Practical practical = GaugeBench.Electrolysis;
        SimulatedClass drawn = SimulatedClass.Draw(
            new Circumstances(practical), GaugeBench.Weights, new SimulationPlan(2000, notesObservations: false), 5, cancellation: TestContext.Current.CancellationToken);
        double[] off = [.. drawn.Groups.SelectMany(g => g.Readings.Where(r => r.Weighing.Reading == "current")).Select(r => (r.Displayed.AsDouble / r.TrueMassInGrams) - 1)];
        double due = Math.Sqrt((0.02 * 0.02 / 3) + (((0.004 * 0.004) + (0.01 * 0.01 / 12)) / (0.40 * 0.40)));

        // 2000 draws: the standard error of a standard deviation is about 1.6 %; five of them.
        Assert.InRange(Math.Sqrt(off.Average(x => x * x)) / due, 0.92, 1.08);
        Assert.All(drawn.Groups, g => Assert.All(g.Readings.Where(r => r.Weighing.Reading == "time"), r => Assert.Equal(0, r.ShiftInGrams)));
    }

    private static CausePosterior Judged(Practical practical, params (string, string)[] readings) =>
        new CauseModel(new Circumstances(practical), GaugeBench.Weights).Of(GaugeBench.Group(practical, readings), GaugeBench.Balance);

    private static double True(SimulatedGroup group, string cause)
    {
        IReadOnlyList<string> causes = group.Truth.Causes;
        return causes.Count == 0 ? (cause == Causes.AsExpected ? 1 : 0) : causes.Contains(cause) ? 1.0 / causes.Count : 0;
    }
}
