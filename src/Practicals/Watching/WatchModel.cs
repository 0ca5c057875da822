using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Watching;

/// <summary>The practical's model made ready for one lesson: what probably happened in a group, and what it is to do. Safe for
/// several threads.</summary>
internal sealed class WatchModel
{
    private readonly PlanSettings plan;
    private readonly AtomicWeights weights;
    private readonly CauseModel model;
    private readonly IReadOnlyList<AmountPrior> planned;
    private readonly double changeOfOneGram;

    /// <summary>Makes it ready.</summary>
    public WatchModel(PlanSettings plan, AtomicWeights weights)
    {
        this.plan = plan;
        this.weights = weights;
        model = new CauseModel(new Circumstances(plan.Practical, plan.AllConditions), weights, plan.Language);
        planned = model.PlannedAmounts(plan.SampleInGrams);
        changeOfOneGram = plan.Practical.Findings.ConstantMass is null ? 0 : new IdealRun(plan.Practical, weights).ChangeOfOneGram;
    }

    /// <summary>Works a group out.</summary>
    /// <param name="group">The group.</param>
    /// <param name="minutesCooled">Minutes between flame out and the last weighing, or null.</param>
    /// <param name="classmates">All groups of the class, or null for this one by itself.</param>
    public (GroupDiagnosis Diagnosis, ConstantMass? Rule) Of(GroupAtWork group, double? minutesCooled, IReadOnlyList<GroupReadings>? classmates)
    {
        BalanceReport balance = BalanceReport.Of(group.Balance);
        Classmates? others = classmates is null ? null : model.ClassmatesOf(classmates);
        IReadOnlyList<AmountPrior> amounts = others is null || others.Priors.SequenceEqual(model.UsualAmounts()) ? planned : others.Priors;
        bool silenceCounts = others?.NoteObservations ?? group.Readings.Remarks.Observations.Count > 0;
        ConstantMass? rule = RuleOf(group.Readings, balance);
        CausePosterior posterior = model.Of(WithMinutes(group.Readings, minutesCooled), balance, amounts, silenceCounts);
        return (Diagnosis.Of(posterior, rule, weights), rule);
    }

    private ConstantMass? RuleOf(GroupReadings readings, BalanceReport balance)
    {
        if (plan.Practical.Findings.ConstantMass is not ConstantMassDefinition definition)
        {
            return null;
        }

        var estimator = new GroupEstimator(plan.Practical, balance, weights, plan.Language);
        return new ConstantMassRule(definition, plan.Practical.RepeatsReaction, (double)balance.ResolutionOf(definition.Reading), changeOfOneGram, plan.Language).Judge(
            readings,
            estimator.Estimate(readings).FirstOrDefault(q => q.Quantity.Id == plan.Practical.Findings.Sample) as QuantityEstimate,
            readings.Readings.Count == 0 ? 0 : estimator.UncertaintyOf(readings.Readings[^1]));
    }

    /// <summary>The minutes stand among the remarks, as a class's file has them.</summary>
    private static GroupReadings WithMinutes(GroupReadings readings, double? minutes) => minutes is not double cooled ? readings : new GroupReadings(
        readings.Name,
        readings.Trial,
        readings.Readings,
        readings.DerivedColumns,
        new GroupRemarks(
            readings.Remarks.Arm,
            readings.Remarks.Time,
            readings.Remarks.Balance,
            [.. readings.Remarks.Observations, FormattableString.Invariant($"flame out {cooled:0.##} min")]),
        readings.Row);
}
