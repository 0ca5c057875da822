using System.Text.RegularExpressions;
using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Findings;

/// <summary>Numbers that a whole class shares: one bottle for all groups.</summary>
public class SharedNumberTests
{
    /// <summary>A saturated solution, every bottle of it a little weaker or stronger; else nothing goes wrong.</summary>
    private static readonly Practical Solution = Sure();

    [Fact]
    public void Groups_of_a_class_have_one_draw_and_classes_have_their_own()
    {
        double[][] classes = [.. Enumerable.Range(1, 200).Select(seed => Strengths((ulong)seed, oneClass: true))];
        Assert.All(classes, c => Assert.Single(c.Distinct()));
        // The file's law, normal [0.359, 0.015]: mean and standard deviation over classes, to three standard errors.
        double[] each = [.. classes.Select(c => c[0])];
        Assert.Equal(0.359, each.Average(), 3 * 0.015 / Math.Sqrt(200));
        Assert.Equal(0.015, Math.Sqrt(each.Average(s => Math.Pow(s - 0.359, 2))), 3 * 0.015 / Math.Sqrt(400));
        Assert.Equal(6, Strengths(1, oneClass: false).Distinct().Count());

        static double[] Strengths(ulong seed, bool oneClass)
        {
            SimulatedClass drawn = Draw(seed, 6, oneClass);
            int at = drawn.Numbers.ToList().IndexOf("saturation");
            return [.. drawn.Groups.Select(g => g.Truth.Values[at])];
        }
    }

    // Solubility is 100 · saturation of the bottle: 0.015 g in 1 g of water is 1.5 g in 100 g. By hand.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(12)]
    public void What_the_groups_share_does_not_shrink_with_their_number(int groups)
    {
        ClassFindings found = Analyse(Draw(3, groups, oneClass: true));
        ClassQuantity solubility = found.Class.Find("solubility")!;
        Assert.Equal(1.5, solubility.CommonStandardUncertainty, 0.001);
        Assert.InRange(solubility.StandardUncertainty, 1.48, 2);
        Assert.Equal(0, found.Class.Find("massChange")!.CommonStandardUncertainty);
        Assert.Contains("that more groups do not lessen: salt in 1 g of water", found.Class.Sentences.Single(s => s.Topic == ConclusionTopic.Value).Text, StringComparison.Ordinal);
    }

    // The accepted value is that of the usual bottle; 95 of 100 classes, each with its own bottle, are to hold it.
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(12)]
    public void The_interval_of_a_class_holds_the_accepted_value_in_95_of_100_classes(int groups)
    {
        int classes = LongProofs.Cases(150, 4000);
        int held = 0, without = 0;
        for (int seed = 1; seed <= classes; seed++)
        {
            ClassQuantity value = Analyse(Draw((ulong)seed, groups, oneClass: true)).Class.Find("solubility")!;
            held += value.Interval.Contains(35.9) ? 1 : 0;
            double chance = Math.Sqrt(Math.Pow(value.StandardUncertainty, 2) - Math.Pow(value.CommonStandardUncertainty, 2));
            without += Math.Abs(value.Value - 35.9) < 2 * chance ? 1 : 0;
        }

        Assert.InRange((double)held / classes, 0.95 - LongProofs.ThreeErrors(0.95, classes), 0.95 + LongProofs.ThreeErrors(0.95, classes));
        Assert.InRange((double)without / classes, 0, groups == 12 ? 0.4 : 0.9);
    }

    // What the stock holds is what the class is to find: then nothing is added for it, and the interval is one for this bottle.
    [Fact]
    public void A_property_of_the_stock_itself_is_no_uncertainty_of_it()
    {
        Practical purity = BuiltInPracticals.Find("carbonate-purity")!;
        Assert.Contains(purity.Parameters, p => p.Shared);
        Assert.Empty(new IdealRun(purity, Given.Weights).SharedIn("percentPurity", new Circumstances(purity)));
    }

    // By hand: a strength of 0.03587 ± 0.0002 moves the share of gas due by 0.0002/0.03587 = 0.558 %.
    [Fact]
    public void A_condition_that_names_the_stock_leaves_nothing_open()
    {
        Practical zinc = BuiltInPracticals.Find("basic-zinc-carbonate")!;
        var ideal = new IdealRun(zinc, Given.Weights);
        Assert.Contains(ideal.SharedIn("residueFraction", new Circumstances(zinc)), s => s.Parameter.Id == "plainShare");
        Assert.DoesNotContain(ideal.SharedIn("residueFraction", new Circumstances(zinc, ["bottle-seventy-two"])), s => s.Parameter.Id == "plainShare");
        Practical marble = BuiltInPracticals.Find("marble-and-acid")!;
        Assert.Equal(0.558, new IdealRun(marble, Given.Weights).SharedIn("percentGas", new Circumstances(marble)).Single().StandardUncertainty, 0.002);
    }

    private static Practical Sure()
    {
        string text = BuiltInPracticals.Find("solubility-by-evaporation")!.SourceText;
        text = Regex.Replace(text, "^    rate: .*$", "    rate: 0", RegexOptions.Multiline)
            .Replace("normal: [0.359, 0.0015]", "normal: [0.359, 0.015]", StringComparison.Ordinal)
            .Replace("law: { beta: [600, 0.8, 0, 1] }", "law: { fixed: 1 }", StringComparison.Ordinal)
            .Replace("law: { beta: [1.2, 500, 0, 1] }", "law: { fixed: 0 }", StringComparison.Ordinal);
        PracticalReading reading = PracticalReader.Read(Regex.Replace(text, @"(?<=rates: {[^}]*)\d+\.\d+", "0"), "f.yaml");
        Assert.Empty(reading.Faults);
        return reading.Practical!;
    }

    private static SimulatedClass Draw(ulong seed, int groups, bool oneClass) => SimulatedClass.Draw(
        new Circumstances(Solution), Given.Weights, new SimulationPlan(groups, oneClass: oneClass), seed, threads: 1, TestContext.Current.CancellationToken);

    private static ClassFindings Analyse(SimulatedClass drawn) => ClassAnalysis.Of(
        Solution,
        new ClassReadings(Solution.Id, [.. drawn.Groups.Select(g => g.HandedIn())], new BalanceReport(BalanceOptions.NothingGiven, new Dictionary<string, decimal> { ["after"] = 0.01m })),
        Given.Weights,
        Given.NoCauses);
}
