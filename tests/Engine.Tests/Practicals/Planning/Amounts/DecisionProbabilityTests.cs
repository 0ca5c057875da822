using System.Text.RegularExpressions;
using Calx.Engine.Tests.Practicals.Clock;
using Calx.Measurement.Distributions;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;

namespace Calx.Engine.Tests.Practicals.Planning.Amounts;

/// <summary>Probabilities of conclusions where they can be had otherwise: in closed form where readings are normal, and by a slow
/// simulation of its own where they are not.</summary>
public sealed class DecisionProbabilityTests
{
    /// <summary>Noise of many divisions, so that a rounded reading is normal with variance s² + d²/12 to many digits.</summary>
    private const double Noise = 4;

    /// <summary>Every group burns the same mass to the end and nothing goes wrong.</summary>
    private static readonly Practical Sure = Plain("law: { fixed: 0.24 }");

    private static readonly Practical ByGain = Plain("law: { fixed: 0.24 }", key: "massChange");

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.10)]
    [InlineData(0.20)]
    public void Groups_that_see_a_gain_are_as_many_as_the_normal_law_says(double grams)
    {
        AmountPoint point = Count(grams, 12);
        // A gain of more than two divisions is one of at least three: the border is at two and a half.
        double gain = grams * 15.999 / 24.305 / 0.01;
        double spread = Math.Sqrt(2 * ((Noise * Noise) + (1.0 / 12)));
        double sees = StandardNormal.UpperTail((2.5 - gain) / spread);
        double seesLoss = StandardNormal.UpperTail((2.5 + gain) / spread);
        ConclusionChance chance = Chance(point, "gains");
        Agrees(sees, chance.GroupRight);
        Agrees(seesLoss, chance.GroupWrong);
    }

    [Theory]
    [InlineData(0.05)]
    [InlineData(0.10)]
    public void Classes_that_show_a_gain_are_as_many_as_the_two_binomials_say(double grams)
    {
        ConclusionChance chance = Chance(Count(grams, 12), "gains");
        double gain = grams * 15.999 / 24.305 / 0.01;
        double spread = Math.Sqrt(2 * ((Noise * Noise) + (1.0 / 12)));
        double rises = StandardNormal.UpperTail((0.5 - gain) / spread);
        double falls = StandardNormal.UpperTail((0.5 + gain) / spread);
        (double right, double wrong) = SignTest(12, rises, falls);
        Agrees(right, chance.ClassRight);
        Agrees(wrong, chance.ClassWrong);
    }

    /// <summary>The slow obvious version: readings drawn one by one, the interval of Fieller by its own formula, no code shared.</summary>
    [Theory]
    [InlineData(0.06)]
    [InlineData(0.12)]
    public void Groups_that_choose_a_formula_are_as_many_as_a_slow_simulation_finds(double grams)
    {
        const int Draws = 40_000;
        var random = new RandomStream(11, 1);
        double u = 0.01 * Math.Sqrt((0.7 * 0.7) + (1.0 / 12));
        int right = 0;
        int wrong = 0;
        for (int i = 0; i < Draws; i++)
        {
            double vessel = 20 + (10 * random.NextDouble());
            double[] shown = [.. new[] { vessel, vessel + grams, vessel + (grams * (1 + (15.999 / 24.305))) }
                .Select(m => Math.Round((m + (0.007 * random.NextNormal())) / 0.01) * 0.01)];
            double metal = (shown[1] - shown[0]) / 24.305;
            double oxygen = (shown[2] - shown[1]) / 15.999;
            double nearest = new[] { 0.5, 1, 2 }.MinBy(c => oxygen / metal > 0 ? Math.Abs(Math.Log(oxygen / metal / c)) : double.PositiveInfinity);
            bool excludes = oxygen / metal > 0 && new[] { 0.5, 1, 2 }.Where(c => c != nearest).All(c =>
            {
                // oxygen - c metal, as a sum over the three readings with its own uncertainty.
                double before = (-1 / 15.999) - (c / 24.305);
                double sigma = u * Math.Sqrt((1 / 15.999 / 15.999) + (before * before) + (c * c / 24.305 / 24.305));
                return Math.Abs(oxygen - (c * metal)) > 1.959964 * sigma;
            });
            right += excludes && nearest == 1 ? 1 : 0;
            wrong += excludes && nearest != 1 ? 1 : 0;
        }

        ConclusionChance chance = Chance(Count(grams, 12, noise: 0.7), "one-to-one");
        Agrees((double)right / Draws, chance.GroupRight, Math.Sqrt(0.25 / Draws));
        Agrees((double)wrong / Draws, chance.GroupWrong, Math.Sqrt(0.25 / Draws));
    }

    [Fact]
    public void Every_standard_error_is_below_a_hundredth()
    {
        foreach (double grams in (double[])[0.02, 0.05, 0.08, 0.24])
        {
            var rules = ConclusionRule.All(Given.Magnesium, Given.Weights);
            AmountPoint point = new ClassSampler(
                new PlanSettings(Given.Magnesium, 12, Given.Balances(1), 60).WithSample(grams), new PlanTables(Given.Weights), rules, gives: _ => true).Count(1, TestContext.Current.CancellationToken);
            Assert.All(point.Chances, c => Assert.All([c.ClassRight, c.ClassWrong, c.GroupRight, c.GroupWrong], s => Assert.InRange(s.StandardError, 1e-5, 0.01)));
        }
    }

    [Fact]
    public void Trials_are_averaged()
    {
        // Four trials: the mean gain scatters half as much; the border of two divisions stays. Groups are judged by the gain, which is
        // normal, so that hardly a trial is set aside as odd (beyond 3.5 of the scatter: one in two thousand).
        AmountPoint point = Count(0.05, 12, trials: 4, of: ByGain);
        double gain = 0.05 * 15.999 / 24.305 / 0.01;
        double spread = Math.Sqrt(2 * ((Noise * Noise) + (1.0 / 12)) / 4);
        // A mean of four counts in quarters of a division: more than two is two and a quarter at least.
        Agrees(StandardNormal.UpperTail((2.125 - gain) / spread), Chance(point, "gains").GroupRight);
    }

    /// <summary>Probability that of n groups so many rise, or fall, that the sign test at 5 % shows it.</summary>
    private static (double Right, double Wrong) SignTest(int n, double rises, double falls)
    {
        double right = 0;
        double wrong = 0;
        for (int up = 0; up <= n; up++)
        {
            for (int down = 0; down + up <= n; down++)
            {
                double probability = Choose(n, up) * Choose(n - up, down)
                    * Math.Pow(rises, up) * Math.Pow(falls, down) * Math.Pow(1 - rises - falls, n - up - down);
                int most = Math.Max(up, down);
                double tail = Enumerable.Range(most, up + down - most + 1).Sum(k => Choose(up + down, k)) / Math.Pow(2, up + down);
                bool shown = up + down > 0 && 2 * tail < 0.05;
                right += shown && up > down ? probability : 0;
                wrong += shown && down > up ? probability : 0;
            }
        }

        return (right, wrong);
    }

    private static double Choose(int n, int k) => Enumerable.Range(1, k).Aggregate(1.0, (c, i) => c * (n - k + i) / i);

    private static void Agrees(double expected, Share counted, double expectedError = 0)
    {
        double error = Math.Sqrt((counted.StandardError * counted.StandardError) + (expectedError * expectedError));
        Assert.Equal(expected, counted.Value, 4.5 * error);
    }

    private static ConclusionChance Chance(AmountPoint point, string id) => point.Chances.Single(c => c.Conclusion.Id == id);

    private static AmountPoint Count(double grams, int groups, double noise = Noise, int trials = 1, Practical? of = null)
    {
        Practical practical = of ?? Sure;
        PlanSettings settings = new PlanSettings(practical, groups, [new Balance(0.01, noise)], 60).WithSample(grams).WithHeatings(1).WithTrials(trials);
        return new ClassSampler(settings, new PlanTables(Given.Weights), ConclusionRule.All(practical, Given.Weights), gives: _ => true).Count(5, TestContext.Current.CancellationToken);
    }

    private static Practical Plain(string sample, string key = "moleRatio")
    {
        string text = Regex.Replace(Given.Magnesium.SourceText, "^    rate: .*$", "    rate: 0", RegexOptions.Multiline)
            .Replace("  key: moleRatio", $"  key: {key}", StringComparison.Ordinal)
            .Replace("law: { normal: [0.24, 0.048] }", sample, StringComparison.Ordinal)
            .Replace("law: { beta: [1.3, 60, 0, 1] }", "law: { fixed: 0 }", StringComparison.Ordinal)
            .Replace("law: { beta: [60, 1.5, 0, 1] }", "law: { fixed: 1 }", StringComparison.Ordinal)
            .Replace("law: { beta: [1.2, 100, 0, 1] }", "law: { fixed: 0 }", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(Regex.Replace(text, @"(?<=rates: {[^}]*)\d+\.\d+", "0"), "sure.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }
}
