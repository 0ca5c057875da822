using Calx.Practicals.Clock;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Clock;

/// <summary>In simulated lessons a group heats again by the trade's rule, two divisions, on its readings. The full decision, with all
/// causes weighed, is held against it on a sample: it is what the group is told in the lesson.</summary>
public sealed class TradeRuleTests
{
    [Fact]
    public void The_trade_s_rule_and_the_full_decision_mostly_agree_on_heating_again()
    {
        int groups = LongProofs.Cases(120, 2000);
        var circumstances = new Circumstances(Given.Magnesium, ["fired", "cleaned-ribbon"]);
        SimulatedClass drawn = SimulatedClass.Draw(
            circumstances, Given.Weights, new SimulationPlan(groups, rounds: 2, notesObservations: false), seed: 31, cancellation: TestContext.Current.CancellationToken);
        var model = new CauseModel(circumstances, Given.Weights);
        var balance = new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>());
        int both = 0;
        int rule = 0;
        int decision = 0;
        foreach (SimulatedGroup group in drawn.Groups)
        {
            decimal[] after = [.. group.Readings.Where(r => r.Weighing.Reading == "after").Select(r => r.Written.Value)];
            bool byRule = Math.Abs(after[1] - after[0]) > 0.02m;
            bool byDecision = Diagnosis.Of(model.Of(group.HandedIn(), balance), null, Given.Weights).Decision is Decision.Taken { Verdict: Verdict.Reheat };
            rule += byRule ? 1 : 0;
            decision += byDecision ? 1 : 0;
            both += byRule == byDecision ? 1 : 0;
        }

        string counts = $"{both} of {groups} agree; rule {rule}, decision {decision}";
        TestContext.Current.TestOutputHelper?.WriteLine(counts);
        Assert.True(both >= 0.7 * groups, counts);
        Assert.True(rule > 0.1 * groups && rule < 0.45 * groups, counts);
    }
}
