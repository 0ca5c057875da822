using System.Text.RegularExpressions;
using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Distributions;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Engine.Tests.Practicals.Model.Simulation;

/// <summary>Predictions, and the fast quantiles behind them.</summary>
public class PredictionTests
{
    private const int Draws = 4000;

    public static TheoryData<string> Practicals => [.. BuiltInPracticals.Ids];

    // The bench of the magnesium file written out by hand, without its faults: molar masses of IUPAC 2024, one heating.
    [Fact]
    public void Predictions_agree_with_the_bench_written_out_by_hand()
    {
        Practical practical = WithoutFaults(Given.Magnesium);
        Prediction fast = Predict(practical, new SimulationPlan(1, new Balance(0.001), rounds: 1));
        const double Magnesium = 24.305, Oxygen = 15.999;
        var random = new RandomStream(99, 0);
        List<double> gain = [];
        List<double> ratio = [];
        for (int i = 0; i < Draws; i++)
        {
            double sample = 0.24 + (0.048 * random.NextNormal());
            double film = BetaFunction.Quantile(1.3, 60, random.NextDouble()) * sample;
            double burnt = BetaFunction.Quantile(60, 1.5, random.NextDouble()) * (sample - film);
            double smoke = BetaFunction.Quantile(1.2, 100, random.NextDouble());
            double oxide = burnt * (Magnesium + Oxygen) / Magnesium;
            double true1 = oxide - burnt - (smoke * oxide);
            double before = Shown(sample);
            gain.Add(Shown(true1 + sample) - before);
            ratio.Add(gain[^1] / Oxygen / (before - Shown(0)) * Magnesium);
        }

        Agrees(gain, fast.Quantities.Single(q => q.Quantity.Id == "massChange").Value!, density: 8);
        Agrees(ratio, fast.Quantities.Single(q => q.Quantity.Id == "moleRatio").Value!, density: 8);

        // The vessel's own mass cancels, but for the place of the rounding, which is even.
        double Shown(double mass) => Math.Round((mass + (0.0007 * random.NextNormal())) / 0.001) * 0.001;
    }

    /// <summary>Vessels scatter by grams and what happens in them by hundredths: the typical readings follow each other as the chemistry
    /// says (common practice, no source: magnesium gains, and a second heating seldom takes it away again; both salts lose), where
    /// medians of the readings as written, each from other groups' vessels, need not.</summary>
    [Theory]
    [InlineData("magnesium-oxide", 1)]
    [InlineData("copper-sulfate-hydrate", -1)]
    [InlineData("sodium-hydrogencarbonate", -1)]
    public void Typical_readings_follow_each_other_as_in_one_group(string id, int direction)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        Prediction prediction = Predict(practical, new SimulationPlan(Draws, rounds: 2));
        double[] heated = [.. prediction.Readings.Where(r => r.Weighing.Reading is "before" or "after").Select(r => r.Typical)];
        Assert.Equal(3, heated.Length);
        Assert.True(direction * (heated[1] - heated[0]) > 0.02, $"{heated[0]} to {heated[1]}");
        Assert.InRange(direction * (heated[2] - heated[1]), 0, 0.05);
        foreach (PredictedReading reading in prediction.Readings)
        {
            // A median's standard error is 1.25 of the mean's; the quarters of a normal law stand 1.35 standard deviations apart.
            double error = 1.25 * (reading.Written.Half.High - reading.Written.Half.Low) / 1.35 / Math.Sqrt(Draws);
            Assert.Equal(reading.Written.Median, reading.Typical, 4.5 * error);
        }
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void Intervals_hold_the_share_of_groups_that_they_say(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        var plan = new SimulationPlan(Draws, rounds: 2);
        Prediction prediction = Predict(practical, plan);
        // Other groups than those that it was made from. Both have errors: twice the variance, four standard errors.
        IReadOnlyList<SimulatedGroup> groups = SimulatedClass.Draw(
            new Circumstances(practical), Given.Weights, plan, 12, cancellation: TestContext.Current.CancellationToken).Groups;
        Assert.Equal(practical.Readings.Sum(r => Math.Min(2, r.Repeats)), prediction.Readings.Count);
        foreach (PredictedReading reading in prediction.Readings)
        {
            double[] contents = [.. groups.Select(g => g.Readings.Single(r => r.Weighing == reading.Weighing).Written.AsDouble - g.PartsOnPanInGrams(reading.Weighing.Reading))];
            // What stands on the pan by itself, without a vessel, is the whole reading.
            PredictedValue value = reading.WithoutParts ?? reading.Written;
            // Many groups share a step at the end of an interval, so it may hold more than it says.
            Assert.InRange(Share(contents, value.Most), 0.95 - (4 * Math.Sqrt(2 * 0.95 * 0.05 / Draws)), 1);
            Assert.InRange(Share(contents, value.Half), 0.50 - (4 * Math.Sqrt(2 * 0.25 / Draws)), 1);
            Assert.InRange(value.Median, value.Half.Low, value.Half.High);
            Assert.InRange(value.Half.Low, value.Most.Low, value.Half.High);
            Assert.Equal(1, value.Share);
        }

        Assert.Equal(practical.Quantities.Select(q => q.Id), prediction.Quantities.Select(q => q.Quantity.Id));
        Assert.All(prediction.Quantities, q => Assert.NotNull(q.Value));

        static double Share(double[] values, (double Low, double High) interval) =>
            values.Count(v => v >= interval.Low - 1e-9 && v <= interval.High + 1e-9) / (double)values.Length;
    }

    [Fact]
    public void A_third_weighing_is_predicted_with_the_share_of_groups_that_take_it()
    {
        Prediction prediction = Predict(Given.Magnesium, new SimulationPlan(1));
        Assert.Equal(["empty", "before", "after", "after2", "after3"], prediction.Readings.Select(r => r.Weighing.Id));
        Assert.Equal(1, prediction.Readings[3].Written.Share);
        Assert.InRange(prediction.Readings[4].Written.Share, 0.1, 0.9);
        Assert.Equal("Mass after reheating 2", prediction.Readings[4].Label);
    }

    [Fact]
    public void What_is_said_of_a_class_narrows_what_is_predicted()
    {
        var plan = new SimulationPlan(1, rounds: 2);
        Prediction usual = Predict(Given.Magnesium, plan);
        Prediction careful = Prediction.Of(
            new Circumstances(Given.Magnesium, ["careful"]), Given.Weights, plan, cancellation: TestContext.Current.CancellationToken);
        Assert.True(Width(careful) < Width(usual));

        static double Width(Prediction p)
        {
            (double low, double high) = p.Quantities.Single(q => q.Quantity.Id == "moleRatio").Value!.Most;
            return high - low;
        }
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void Fast_quantiles_are_the_laws_own(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        var circumstances = new Circumstances(practical);
        var fast = new LawTables(circumstances, new LawTableCache());
        IEnumerable<ParameterLaw> laws = practical.Faults.Select(f => f.Effect).OfType<FaultEffect.Set>()
            .SelectMany(s => s.Settings).Select(s => s.Law).Concat(practical.Parameters.Select(p => p.Law));
        foreach (ParameterLaw law in laws)
        {
            double spread = Math.Abs(LawQuantile.Of(law, 0.9) - LawQuantile.Of(law, 0.1));
            for (int i = 1; i < 500; i++)
            {
                double p = i / 500.0;
                Assert.Equal(LawQuantile.Of(law, p), fast.Of(law, p), (1e-3 * spread) + 1e-15);
            }

            foreach (double p in (double[])[3e-4, 1e-3, 3e-3, 0.01, 0.99, 0.997, 0.999, 0.9997])
            {
                Assert.Equal(LawQuantile.Of(law, p), fast.Of(law, p), (1e-3 * spread) + 1e-15);
            }

            foreach (double tail in (double[])[1e-9, 1e-5, 1 - 1e-5, 1 - 1e-9])
            {
                Assert.Equal(LawQuantile.Of(law, tail), fast.Of(law, tail));
            }
        }
    }

    /// <summary>Quartiles within four standard errors of each other: a quantile at p has √(p(1 − p)/n) over the density, which
    /// near the middle of such a law is about 1 over 1.4 times its quartile range.</summary>
    private static void Agrees(List<double> slow, PredictedValue fast, double density)
    {
        slow.Sort();
        double range = slow[3 * Draws / 4] - slow[Draws / 4];
        double error = density * Math.Sqrt(0.25 / Draws) * range;
        Assert.Equal(slow[Draws / 2], fast.Median, error);
        Assert.Equal(slow[Draws / 4], fast.Half.Low, error);
        Assert.Equal(slow[3 * Draws / 4], fast.Half.High, error);
    }

    private static Prediction Predict(Practical practical, SimulationPlan plan) =>
        Prediction.Of(new Circumstances(practical), Given.Weights, plan, Draws, cancellation: TestContext.Current.CancellationToken);

    private static Practical WithoutFaults(Practical practical)
    {
        PracticalReading reading = PracticalReader.Read(
            Regex.Replace(practical.SourceText, "^    rate: .*$", "    rate: 0", RegexOptions.Multiline), "x.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }
}
