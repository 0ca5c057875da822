using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Concluding;

public sealed class ConclusionRuleTests
{
    private static readonly AtomicWeights Weights = AtomicWeights.Iupac2024;

    /// <summary>Standard uncertainty of one reading of a 0.01 g balance with 0.7 divisions of scatter: √(0.01²/12 + 0.007²).</summary>
    private static readonly double U = Math.Sqrt((0.0001 / 12) + 0.000049);

    private static Practical Magnesium => BuiltInPracticals.Find("magnesium-oxide")!;

    /// <summary>Two divisions count as no change: common practice, no source.</summary>
    [Theory]
    [InlineData(30.24, 30.38, Bearing.Right)]
    [InlineData(30.24, 30.27, Bearing.Right)]
    [InlineData(30.24, 30.26, Bearing.Open)]
    [InlineData(30.24, 30.24, Bearing.Open)]
    [InlineData(30.24, 30.22, Bearing.Open)]
    [InlineData(30.24, 30.21, Bearing.Wrong)]
    public void A_group_sees_a_gain_beyond_two_divisions(double before, double after, Bearing expected) =>
        Assert.Equal(expected, Rule("gains").OfGroup([30.00, before, after], U, 0.01));

    /// <summary>
    /// By hand, with Ar(Mg) = 24.305 and Ar(O) = 15.999: 0.24 g and 0.14 g are 0.886 to 1. One to two and two to one differ from
    /// it by far more than 1.96 of 12 %. Of 0.04 g and 0.03 g, 1.14 to 1, the readings leave both open; of 0.24 g and 0.30 g,
    /// 1.9 to 1, they lead to two to one. The border between one and two is their geometric mean, 1.41.
    /// </summary>
    [Theory]
    [InlineData(30.24, 30.38, Bearing.Right)]
    [InlineData(30.04, 30.07, Bearing.Open)]
    [InlineData(30.24, 30.54, Bearing.Wrong)]
    [InlineData(30.24, 30.24, Bearing.Open)]
    [InlineData(30.24, 30.20, Bearing.Open)]
    public void A_group_chooses_the_nearest_number_once_its_readings_exclude_the_others(double before, double after, Bearing expected) =>
        Assert.Equal(expected, Rule("one-to-one").OfGroup([30.00, before, after], U, 0.01));

    /// <summary>T1 of a marker's file, 30.00, 30.24, 30.38: 0.886, eleven per cent off, but the readings reach from 0.66 to 1.17, so
    /// that they do not exclude five per cent either; at a milligram they do.</summary>
    [Fact]
    public void Nearness_is_refused_only_where_the_balance_can_tell()
    {
        Assert.Equal(Bearing.Open, Rule("within-five").OfGroup([30.00, 30.24, 30.38], U, 0.01));
        Assert.Equal(Bearing.Wrong, Rule("within-five").OfGroup([30.000, 30.240, 30.380], U / 10, 0.001));
        Assert.Equal(Bearing.Right, Rule("within-five").OfGroup([30.000, 30.240, 30.396], U / 10, 0.001));
    }

    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    [InlineData("sodium-hydrogencarbonate")]
    public void The_perfect_group_reaches_every_conclusion(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        var ideal = new Calx.Practicals.Model.IdealRun(practical, Weights);
        double[] last = [.. practical.Readings.Select(r => ideal.Masses.Last(r.Id))];
        IReadOnlyList<ConclusionRule> rules = ConclusionRule.All(practical, Weights);
        Assert.Equal(practical.Conclusions.Count, rules.Count);
        Assert.All(rules, rule => Assert.Equal(Bearing.Right, rule.OfGroup(last, U / 10, 0.001)));
    }

    /// <summary>Fast rules for a plan and slow ones for a taught class are the same rules: on invented classes, faults and all, signs
    /// and pooled values agree.</summary>
    [Theory]
    [InlineData("magnesium-oxide", 0.06)]
    [InlineData("magnesium-oxide", 0.24)]
    [InlineData("copper-sulfate-hydrate", 0.5)]
    public void A_planned_class_is_judged_as_a_taught_one(string id, double sample)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        IReadOnlyList<ConclusionRule> rules = ConclusionRule.All(practical, Weights);
        ConclusionRule moves = rules.First(r => r.Test is ConclusionTest.Moves);
        ConclusionRule number = rules.First(r => r.Test is ConclusionTest.Chooses);
        var verdict = new ClassVerdict(12);
        var impossible = new ImpossibleRule(practical, Weights);
        int shown = 0;
        for (ulong seed = 1; seed <= 40; seed++)
        {
            SimulatedClass drawn = SimulatedClass.Draw(
                new Circumstances(practical), Weights, new SimulationPlan(12, sampleInGrams: sample), seed, cancellation: TestContext.Current.CancellationToken);
            var readings = new ClassReadings(
                practical.Id, [.. drawn.Groups.Select(g => g.HandedIn())], new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>()));
            ClassFindings slow = ClassAnalysis.Of(practical, readings, Weights, Given.NoCauses);
            double[][] last = [.. drawn.Groups.Select(g => practical.Readings
                .Select(r => g.Readings.Last(x => x.Weighing.Reading == r.Id).Written.AsDouble).ToArray())];
            bool[] odd = [.. last.Select(l => impossible.Holds(l, U))];
            new OddGroups(last.Length).Mark([.. last.Select(l => number.Lines.Of(l, U))], odd);
            Assert.Equal(slow.Groups.Select(g => g.IsAnomalous), odd);
            Bearing fast = verdict.Of(moves, [.. last.Select(l => moves.Lines.Of(l, U))], odd, 0.01);
            var direction = Assert.IsType<ChangeEvidence.Direction>(slow.Class.Change);
            Assert.Equal(direction.Shown, fast == Bearing.Right);
            shown += direction.Shown ? 1 : 0;

            (MeasuredValue pooled, double factor) = verdict.Pool([.. last.Select(l => number.Lines.Of(l, U))], odd, number.ExpectedBetween, number.Common);
            ClassQuantity value = slow.Class.Quantities.Single(q => q.Quantity.Id == number.Test.Quantity);
            Assert.Equal(value.Value, pooled.Value, 1e-4 * value.StandardUncertainty);
            Assert.Equal(value.Interval.High - value.Value, factor * pooled.StandardUncertainty, 1e-3 * value.StandardUncertainty);
        }

        Assert.InRange(shown, 1, 40);
    }

    /// <summary>The same groups are set aside, quantity by quantity, also where several are searched for odd results.</summary>
    [Theory]
    [InlineData("tablet-in-water")]
    [InlineData("copper-electrolysis")]
    public void A_planned_class_leaves_out_the_same_groups_as_a_taught_one(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        var judged = new JudgedQuantities(practical, new Calx.Practicals.Model.IdealRun(practical, Weights), practical.Findings.Key, _ => true);
        QuantityLines[] lines = [.. judged.All.Select(q => new QuantityLines(practical, q, Weights))];
        var impossible = new ImpossibleRule(practical, Weights);
        int elsewhere = 0;
        for (ulong seed = 1; seed <= 20; seed++)
        {
            SimulatedClass drawn = SimulatedClass.Draw(
                new Circumstances(practical), Weights, new SimulationPlan(12), seed, cancellation: TestContext.Current.CancellationToken);
            var readings = new ClassReadings(
                practical.Id, [.. drawn.Groups.Select(g => g.HandedIn())], new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>()));
            ClassFindings slow = ClassAnalysis.Of(practical, readings, Weights, Given.NoCauses);
            double[][] last = [.. drawn.Groups.Select(g => practical.Readings
                .Select(r => g.Readings.Last(x => x.Weighing.Reading == r.Id).Written.AsDouble).ToArray())];
            bool[] never = [.. last.Select(l => impossible.Holds(l, U))];
            bool[][] odd = [.. lines.Select(_ => (bool[])never.Clone())];
            for (int j = 0; j < lines.Length; j++)
            {
                new OddGroups(last.Length).Mark([.. last.Select(l => lines[j].Of(l, U))], odd[j], lines.Length);
            }

            foreach (QuantityDefinition quantity in practical.Quantities)
            {
                int[] places = [.. Enumerable.Range(0, lines.Length).Where(j => judged.SetsAside(j, quantity))];
                Assert.Equal(slow.Groups.Select(g => g.IsSetAside(quantity.Id)), Enumerable.Range(0, last.Length).Select(g => never[g] || places.Any(j => odd[j][g])));
            }

            elsewhere += slow.Groups.Count(g => g.IsAnomalous && !g.IsSetAside(practical.Findings.Key));
        }

        Assert.InRange(elsewhere, 5, 120);
    }

    /// <summary>A change counts as none up to two divisions, or up to the grams that the file names where they are more: by hand.</summary>
    [Theory]
    [InlineData("stays: massChange", 30.24, 30.26, 0.01, Bearing.Right)]
    [InlineData("stays: massChange", 30.240, 30.245, 0.001, Bearing.Wrong)]
    [InlineData("stays: { quantity: massChange, within: 0.02 }", 30.240, 30.245, 0.001, Bearing.Right)]
    [InlineData("stays: { quantity: massChange, within: 0.02 }", 30.240, 30.260, 0.001, Bearing.Right)]
    [InlineData("stays: { quantity: massChange, within: 0.02 }", 30.240, 30.265, 0.001, Bearing.Wrong)]
    [InlineData("stays: { quantity: massChange, within: 0.02 }", 30.2, 30.4, 0.1, Bearing.Right)]
    [InlineData("stays: { quantity: massChange, within: 0.02 }", 30.2, 30.6, 0.1, Bearing.Wrong)]
    public void A_mass_stays_within_the_larger_of_divisions_and_grams(string test, double before, double after, double division, Bearing expected)
    {
        Practical practical = PracticalReader.Read(
            Magnesium.SourceText.Replace("test: { rises: massChange }", $"test: {{ {test} }}", StringComparison.Ordinal), "same.yaml").Practical!;
        ConclusionRule stays = ConclusionRule.All(practical, Weights).First(r => r.Test is ConclusionTest.Stays);
        double u = U * division / 0.01;
        Assert.Equal(expected, stays.OfGroup([30.00, before, after], u, division));
        // A class of four such groups, which scatter by nothing, comes to the same; at the very edge nothing is excluded.
        bool isEdge = Math.Abs(Math.Abs(after - before) - stays.BandInGrams(division)) < 1e-9;
        MeasuredValue[] values = [.. Enumerable.Repeat(stays.Lines.Of([30.00, before, after], u), 4)];
        Assert.Equal(isEdge ? Bearing.Open : expected, new ClassVerdict(4).Of(stays, values, new bool[4], division));
    }

    /// <summary>The same where a mass is said to stay, for few groups and for many.</summary>
    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(12)]
    public void A_mass_that_stays_is_judged_as_in_a_taught_class(int groups)
    {
        string text = Magnesium.SourceText
            .Replace("expect: rises ", "expect: same ", StringComparison.Ordinal)
            .Replace("test: { rises: massChange }", "test: { stays: massChange }", StringComparison.Ordinal)
            .Replace("law: { normal: [0.24, 0.048] }", "law: { normal: [0.02, 0.004] }", StringComparison.Ordinal);
        Practical practical = PracticalReader.Read(text, "same.yaml").Practical!;
        ConclusionRule stays = ConclusionRule.All(practical, Weights).First(r => r.Test is ConclusionTest.Stays);
        ConclusionRule number = ConclusionRule.All(practical, Weights).First(r => r.Test is ConclusionTest.Chooses);
        var verdict = new ClassVerdict(groups);
        var impossible = new ImpossibleRule(practical, Weights);
        int shown = 0;
        for (ulong seed = 1; seed <= 40; seed++)
        {
            SimulatedClass drawn = SimulatedClass.Draw(
                new Circumstances(practical), Weights, new SimulationPlan(groups), seed, cancellation: TestContext.Current.CancellationToken);
            var readings = new ClassReadings(
                practical.Id, [.. drawn.Groups.Select(g => g.HandedIn())], new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>()));
            var slow = (ChangeEvidence.Sameness)ClassAnalysis.Of(practical, readings, Weights, Given.NoCauses).Class.Change;
            double[][] last = [.. drawn.Groups.Select(g => practical.Readings
                .Select(r => g.Readings.Last(x => x.Weighing.Reading == r.Id).Written.AsDouble).ToArray())];
            bool[] odd = [.. last.Select(l => impossible.Holds(l, U))];
            new OddGroups(last.Length).Mark([.. last.Select(l => number.Lines.Of(l, U))], odd);
            Bearing fast = verdict.Of(stays, [.. last.Select(l => stays.Lines.Of(l, U))], odd, 0.01);
            Assert.Equal(slow.Shown, fast == Bearing.Right);
            shown += slow.Shown ? 1 : 0;
        }

        Assert.InRange(shown, 2, 38);
    }

    private static ConclusionRule Rule(string id) => ConclusionRule.All(Magnesium, Weights).Single(r => r.Conclusion.Id == id);
}
