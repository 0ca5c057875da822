using Calx.Engine.Tests.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>In how many groups a fault happened, from readings.</summary>
public sealed class FaultCountsTests
{
    private const int Groups = 40;

    /// <summary>The law of total probability: over groups drawn at the file's rates, probabilities that start from these rates average to
    /// them. Were only faults counted that move the result, or groups with three faults forgotten, a third of them would be missing. Bound: two standard deviations of the true
    /// number, which scatters more than its expectation does; the seed is fixed.</summary>
    [Fact]
    public void Over_a_class_of_the_file_s_own_kind_the_counts_are_those_of_the_file_s_rates()
    {
        Practical practical = Given.Magnesium;
        IReadOnlyList<FaultSeen> seen = Count(practical, []);
        double expected = Groups * practical.Faults.Sum(f => f.Rate);
        double scatter = Math.Sqrt(Groups * practical.Faults.Sum(f => f.Rate * (1 - f.Rate)));
        Assert.Equal(practical.Faults.Select(f => f.Cause), seen.Select(s => s.Cause));
        Assert.InRange(seen.Sum(s => s.Expected), expected - (2 * scatter), expected + (2 * scatter));
        Assert.All(seen, s => Assert.Equal(Groups, s.Groups));
    }

    [Fact]
    public void A_rate_that_is_said_otherwise_of_the_class_is_not_learned_from_it() => Assert.DoesNotContain(Count(Given.Magnesium, ["fired"], groups: 2), s => s.Cause == "damp-vessel");

    private static IReadOnlyList<FaultSeen> Count(Practical practical, IReadOnlyList<string> conditions, int groups = Groups)
    {
        SimulatedClass drawn = SimulatedClass.Draw(new Circumstances(practical, conditions), Given.Weights, new SimulationPlan(groups, Given.Centigram), 3);
        var report = new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>());
        return new FaultCounts(practical, conditions, Given.Weights).Of(new ClassReadings(practical.Id, [.. drawn.Groups.Select(g => g.HandedIn())], report));
    }
}
