using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Shelf;

/// <summary>Invented classes of every practical, handed to the analysis as a class would hand them in.</summary>
public sealed class SimulatedShelfTests
{
    private static readonly AtomicWeights Weights = AtomicWeights.Iupac2024;

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_invented_class_is_analysed_whole(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        SimulatedClass drawn = SimulatedClass.Draw(new Circumstances(practical), Weights, new SimulationPlan(6), seed: 8, cancellation: TestContext.Current.CancellationToken);
        ClassFindings findings = ClassAnalysis.Of(practical, HandedIn(practical, drawn), Weights);

        Assert.Empty(findings.Identifiability.Undetermined);
        Assert.NotEmpty(findings.Class.Conclusion);
        Assert.Equal(6, findings.Groups.Count);
        Assert.All(findings.Groups, g =>
        {
            Assert.All(g.Quantities.OfType<QuantityEstimate>(), q => Assert.True(double.IsFinite(q.Value) && q.StandardUncertainty > 0, $"{q.Quantity.Id} {q.Value} ± {q.StandardUncertainty}"));
            Assert.Equal(1, g.Diagnosis!.Causes.Sum(c => c.Probability), 9);
        });
    }

    private static ClassReadings HandedIn(Practical practical, SimulatedClass drawn) => new(
        practical.Id, [.. drawn.Groups.Select(g => g.HandedIn())], new BalanceReport(BalanceOptions.NothingGiven, new Dictionary<string, decimal>()));
}
