using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.Planning;

/// <summary>
/// The invented class of a lesson without practical work: what its groups wrote down, drawn from the practical's model with its faults, and what
/// is true of them. The same plan and seed give the same class.
/// </summary>
public sealed class CoverClass
{
    /// <summary>Fewer groups show no spread.</summary>
    public const int FewestGroups = 8;

    /// <summary>More do not fit on one side with the questions.</summary>
    public const int MostGroups = 12;

    private CoverClass(IReadOnlyList<Weighing> weighings, IReadOnlyList<CoverGroup> groups) => (Weighings, Groups) = (weighings, groups);

    /// <summary>The weighings that some group took, in order.</summary>
    public IReadOnlyList<Weighing> Weighings { get; }

    /// <summary>The groups in order.</summary>
    public IReadOnlyList<CoverGroup> Groups { get; }

    /// <summary>Invents it: as many groups as the plan has, from <see cref="FewestGroups"/> to <see cref="MostGroups"/>, on the plan's first balance;
    /// of a demonstration one set of readings, as the lesson would have had.</summary>
    /// <param name="plan">The lesson that it stands for.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="seed">Which of the possible classes.</param>
    public static CoverClass Of(PlanSettings plan, AtomicWeights weights, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(weights);
        // Where the plan has one heating nobody reheats; otherwise until two weighings agree, as the sheet tells a group.
        var what = new SimulationPlan(
            plan.Practical.Limits.IsDemonstration ? 1 : Math.Clamp(plan.Groups, FewestGroups, MostGroups), plan.Balances[0], plan.Heatings == 1 ? 1 : 0, sampleInGrams: plan.SampleInGrams, notesObservations: false);
        SimulatedClass drawn = SimulatedClass.Draw(new Circumstances(plan.Practical, plan.AllConditions), weights, what, seed, threads: 1);
        return new CoverClass(
            [.. drawn.Weighings.Where(w => !plan.Unread.Contains(w.Reading))],
            [
                .. drawn.Groups.Select(group => new CoverGroup(
                    group.Number,
                    group.Readings.Where(r => !plan.Unread.Contains(r.Weighing.Reading)).ToDictionary(r => r.Weighing, r => r.Written.Value),
                    [
                        .. group.Truth.Counting.Faults.OrderByDescending(f => Math.Abs(group.Truth.MovedInGrams[f]))
                            .Select(f => new CoverCause(plan.Practical.Faults[f], group.Truth.MovedInGrams[f])),
                    ],
                    group.Series)),
            ]);
    }
}
