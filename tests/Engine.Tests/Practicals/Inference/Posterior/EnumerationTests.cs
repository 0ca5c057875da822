using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>
/// The posterior against full enumeration of a small case, written out by hand with the masses of the chemistry: sums over a
/// fine grid of the vessel's mass, the sample and the size of each fault, every reading with its exact rounding.
/// </summary>
public class EnumerationTests
{
    private const double OxygenOfOneGram = 15.999 / 24.305;
    private static readonly Balance Balance = new(0.01);

    [Theory]
    [InlineData("24.51", "24.75", "24.90")]
    [InlineData("24.51", "24.75", "24.88")]
    [InlineData("24.51", "24.75", "24.87")]
    [InlineData("24.51", "24.75", "24.83")]
    [InlineData("24.51", "24.81", "24.96")]
    [InlineData("24.51", "24.75", "24.91")]
    public void Probabilities_agree_with_full_enumeration(string empty, string before, string after)
    {
        var model = new CauseModel(new Circumstances(SmallBench.Practical), Given.Weights);
        GroupReadings group = Given.Group("1", ("empty", empty), ("before", before), ("after", after));
        CausePosterior found = model.Of(
            group, Given.Class(SmallBench.Practical, group).Balance, model.UsualAmounts(1), silenceCounts: false);

        (double asExpected, double lost, double damp) = Enumerate(Grams(empty), Grams(before), Grams(after));

        Assert.Equal(asExpected, found.AsExpected, 0.01);
        Assert.Equal(lost, found.Causes.Single(c => c.Cause == "product-lost").Probability, 0.01);
        Assert.Equal(damp, found.Causes.Single(c => c.Cause == "damp-vessel").Probability, 0.01);
    }

    [Fact]
    public void The_mean_log_score_is_that_of_full_enumeration()
    {
        int draws = LongProofs.Cases(3, 60);
        var circumstances = new Circumstances(SmallBench.Practical);
        var model = new CauseModel(circumstances, Given.Weights);
        var drawer = new GroupDrawer(circumstances, Given.Weights, new SimulationPlan(draws, new Balance(0.01, 0.7), rounds: 1, notesObservations: false));
        double away = 0;
        for (int n = 1; n <= draws; n++)
        {
            SimulatedGroup group = drawer.Draw(31, (ulong)n, n);
            GroupReadings readings = group.HandedIn();
            CausePosterior found = model.Of(
                readings, Given.Class(SmallBench.Practical, readings).Balance, model.UsualAmounts(1), silenceCounts: false);
            (double asExpected, double lost, double damp) = Enumerate(Read("empty"), Read("before"), Read("after"));
            away += Score(asExpected, lost, damp) - Score(found.AsExpected, Of("product-lost"), Of("damp-vessel"));

            double Read(string id) => readings.LastOf(id)!.Value.AsDouble;

            double Of(string cause) => found.Causes.Single(c => c.Cause == cause).Probability;

            double Score(double expected, double isLost, double isDamp) => group.Truth.Causes.Count == 0
                ? Math.Log(expected)
                : group.Truth.Causes.Average(c => Math.Log(c == "product-lost" ? isLost : isDamp));
        }

        Assert.InRange(Math.Abs(away) / draws, 0, 0.02);
    }

    private static double Grams(string digits)
    {
        Assert.True(WrittenNumber.TryParse(digits, out WrittenNumber value));
        return value.AsDouble;
    }

    private static (double AsExpected, double Lost, double Damp) Enumerate(double empty, double before, double after)
    {
        const int Sizes = 160;
        double odds(double rate) => rate / (1 - rate);
        double[] sums = new double[3];
        foreach ((double vessel, double sample, double weight) in Cells(empty, before))
        {
            double product = vessel + (sample * (1 + OxygenOfOneGram));
            Take(0, 0, 1);
            for (int i = 0; i < Sizes; i++)
            {
                Take((i + 0.5) / Sizes * SmallBench.MostLost, 0, odds(SmallBench.RateLost) / Sizes);
                Take(0, (i + 0.5) / Sizes * SmallBench.MostDamp, odds(SmallBench.RateDamp) / Sizes);
            }

            for (int i = 0; i < 32; i++)
            {
                for (int j = 0; j < 32; j++)
                {
                    Take(
                        (i + 0.5) / 32 * SmallBench.MostLost,
                        (j + 0.5) / 32 * SmallBench.MostDamp,
                        odds(SmallBench.RateLost) * odds(SmallBench.RateDamp) / (32 * 32));
                }
            }

            void Take(double smoke, double damp, double prior)
            {
                double lostGrams = sample * (1 + OxygenOfOneGram) * smoke;
                double likelihood = weight * prior * Balance.ProbabilityOfDigits(new WrittenNumber((decimal)Math.Round(after, 2)), product - lostGrams - damp);
                double threshold = Math.Max(0.02, 0.05 * OxygenOfOneGram * sample);
                bool isLost = lostGrams > threshold;
                bool isDamp = damp > threshold;
                if (!isLost && !isDamp && lostGrams + damp > threshold)
                {
                    isLost = lostGrams >= damp;
                    isDamp = !isLost;
                }

                sums[0] += isLost || isDamp ? 0 : likelihood;
                sums[1] += isLost ? likelihood / (isDamp ? 2 : 1) : 0;
                sums[2] += isDamp ? likelihood / (isLost ? 2 : 1) : 0;
            }
        }

        double total = sums.Sum();
        return (sums[0] / total, sums[1] / total, sums[2] / total);
    }

    /// <summary>Vessel (with its water) and sample: a grid over five standard deviations, weighed by the first two
    /// readings.</summary>
    private static IEnumerable<(double Vessel, double Sample, double Weight)> Cells(double empty, double before)
    {
        const int Steps = 24;
        for (int v = -Steps; v <= Steps; v++)
        {
            double vessel = empty + (v * 0.04 / Steps);
            double first = Balance.ProbabilityOfDigits(new WrittenNumber((decimal)Math.Round(empty, 2)), vessel);
            for (int s = -Steps; s <= Steps; s++)
            {
                double sample = before - empty + (s * 0.06 / Steps);
                double prior = Math.Exp(-Math.Pow((sample - 0.24) / 0.048, 2) / 2);
                double weight = first * prior * Balance.ProbabilityOfDigits(new WrittenNumber((decimal)Math.Round(before, 2)), vessel + sample);
                if (weight > 1e-9)
                {
                    yield return (vessel, sample, weight);
                }
            }
        }
    }
}
