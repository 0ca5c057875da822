using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Practicals.CatchUp;

/// <summary>
/// The sensible decision after each heating: that of a lesson (docs/methods/decision.md), for a group of which no more is known than the
/// readings up to there. Safe for several threads.
/// </summary>
internal sealed class PackDecisions
{
    private readonly PlanSettings plan;
    private readonly AtomicWeights weights;
    private readonly CauseModel model;
    private readonly IReadOnlyList<AmountPrior> amounts;
    private readonly BalanceReport balance;
    private readonly double changeOfOneGram;

    /// <summary>Makes a plan's model ready.</summary>
    public PackDecisions(PlanSettings plan, AtomicWeights weights)
    {
        (this.plan, this.weights) = (plan, weights);
        model = new CauseModel(new Circumstances(plan.Practical, plan.AllConditions), weights, plan.Language);
        amounts = model.PlannedAmounts(plan.SampleInGrams);
        balance = BalanceReport.Of(plan.Balances[0]);
        changeOfOneGram = plan.Practical.Findings.ConstantMass is null ? 0 : new IdealRun(plan.Practical, weights).ChangeOfOneGram;
    }

    /// <summary>The decisions, in order of the heatings.</summary>
    public IReadOnlyList<PackDecision> Of(IReadOnlyList<PackReading> readings)
    {
        int heatings = readings.Max(r => r.Weighing.Occurrence);
        return [.. Enumerable.Range(1, heatings).Select(h => After(h, readings)).OfType<PackDecision>()];
    }

    private PackDecision? After(int heating, IReadOnlyList<PackReading> readings)
    {
        var group = new GroupReadings(
            "pack", trial: null, [.. readings.Where(r => r.Weighing.Occurrence <= heating).Select(r => new TakenReading(r.Weighing.Reading, r.Weighing.Occurrence, r.Displayed))]);
        CausePosterior posterior = model.Of(group, balance, amounts, silenceCounts: false);
        return new DecisionRule(new Outlook(posterior, weights), RuleOf(group), seen: []).Decide() is Decision.Taken taken
            ? new PackDecision(heating, taken.Word, taken.Why, taken.ProbabilitySpoiled) : null;
    }

    /// <summary>What the trade's rule says of the last two weighings.</summary>
    private ConstantMass? RuleOf(GroupReadings group)
    {
        if (plan.Practical.Findings.ConstantMass is not ConstantMassDefinition rule)
        {
            return null;
        }

        var estimator = new GroupEstimator(plan.Practical, balance, weights, plan.Language);
        return new ConstantMassRule(rule, plan.Practical.RepeatsReaction, (double)balance.ResolutionOf(rule.Reading), changeOfOneGram, plan.Language).Judge(
            group,
            estimator.Estimate(group).FirstOrDefault(q => q.Quantity.Id == plan.Practical.Findings.Sample) as QuantityEstimate,
            estimator.UncertaintyOf(group.Readings[^1]));
    }
}
