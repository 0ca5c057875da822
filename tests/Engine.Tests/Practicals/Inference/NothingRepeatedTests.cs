using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference;

/// <summary>Practicals that repeat nothing, and practicals in which no change is due: causes are looked for all the same, and their sizes
/// are masses, not shares of nothing.</summary>
public class NothingRepeatedTests
{
    [Theory]
    [InlineData("tablet-in-water", "not-all-reacted")]
    public void A_cause_has_a_size_in_grams(string id, string cause)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        SimulatedClass drawn = SimulatedClass.Draw(
            new Circumstances(practical), Given.Weights, new SimulationPlan(2, cause: cause), seed: 2, cancellation: TestContext.Current.CancellationToken);
        ClassFindings found = ClassAnalysis.Of(
            practical,
            new ClassReadings(practical.Id, [.. drawn.Groups.Select(g => g.HandedIn())], new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>())),
            Given.Weights, AnalysisOptions.Usual);
        string[] said = [.. found.Groups.Select(g => g.Diagnosis!.ForTeacher)];
        Assert.Contains(said, s => s.Length > 0);
        Assert.All(said, s => Assert.False(s.Contains("Infinity", StringComparison.Ordinal) || s.Contains("NaN", StringComparison.Ordinal), s));
    }

    [Theory]
    [InlineData("magnesium-oxide", true)]
    [InlineData("copper-sulfate-hydrate", true)]
    [InlineData("solubility-by-evaporation", false)]
    [InlineData("precipitation-in-closed-flask", false)]
    public void Only_a_round_with_a_reaction_makes_one_go_on(string id, bool expected) =>
        Assert.Equal(expected, BuiltInPracticals.Find(id)!.RepeatsReaction);
}
