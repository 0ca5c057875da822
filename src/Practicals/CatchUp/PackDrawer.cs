using Calx.Chemistry.Elements;
using Calx.Measurement.Distributions;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.CatchUp;

/// <summary>
/// Draws students' data from the practical's model. Whether something is to have gone wrong is decided first, by the share asked for;
/// groups are then drawn until one is so. Given that, data are those of the model: nothing is made up for the purpose. Safe for several
/// threads.
/// </summary>
internal sealed class PackDrawer
{
    private const int MostAttempts = 20_000;

    /// <summary>Stream of random numbers of what a class shares.</summary>
    private const ulong SharedStream = 1UL << 57;

    private readonly PlanSettings plan;
    private readonly double oddShare;
    private readonly IReadOnlySet<string> never;
    private readonly GroupDrawer drawer;
    private readonly double[]? shared;

    /// <summary>Makes a plan's model ready. Its first balance shows the readings, and it heats as often as the practical allows, so that
    /// every decision can be taken.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="oddShare">Share of the packs in which something went wrong.</param>
    /// <param name="classSeed">Which of the possible classes: what a class shares, its students share; null where each is of a class of its
    /// own.</param>
    public PackDrawer(PlanSettings plan, AtomicWeights weights, double oddShare, ulong? classSeed = null)
    {
        this.plan = plan;
        this.oddShare = oddShare;
        never = NeverPlanted.Of(plan.Practical);
        drawer = new GroupDrawer(
            new Circumstances(plan.Practical, plan.AllConditions).Without(never),
            weights,
            new SimulationPlan(
                1, plan.Balances[0], PlanSettings.MostHeatings(plan.Practical), sampleInGrams: plan.SampleInGrams, notesObservations: false));
        shared = classSeed is ulong seed ? drawer.SharedOf(seed, SharedStream) : null;
    }

    /// <summary>Draws a student's data.</summary>
    /// <param name="seed">The student's seed.</param>
    /// <param name="redrawn">How often they were redrawn because another student has the same.</param>
    /// <exception cref="CannotSimulateException">No group is as it is to be.</exception>
    public DrawnPack Draw(ulong seed, int redrawn)
    {
        bool isOdd = new RandomStream(seed, 0).NextDouble() < oddShare;
        var random = new RandomStream(seed, 1 + (ulong)redrawn);
        for (int attempt = 0; attempt < MostAttempts; attempt++)
        {
            if (GroupDraw.Group(drawer, drawer.NextSet(random), random, 1, shared) is SimulatedGroup group
                && group.Truth.Causes.Count > 0 == isOdd && !group.Truth.Causes.Any(never.Contains))
            {
                return Pack(group);
            }
        }

        throw CannotSimulateException.NoPack(plan.Practical.Id, isOdd, MostAttempts);
    }

    private DrawnPack Pack(SimulatedGroup group)
    {
        IReadOnlyList<FaultDefinition> faults = plan.Practical.Faults;
        PlantedCause[] planted =
        [
            .. group.Truth.Counting.Faults.Select(f => new PlantedCause(faults[f].Cause, faults[f].Label, group.Truth.MovedInGrams[f]))
                .OrderByDescending(c => Math.Abs(c.MovedInGrams)),
        ];
        return new DrawnPack(
            [
                .. group.Readings.Where(r => !plan.Unread.Contains(r.Weighing.Reading))
                    .Select(r => new PackReading(r.Weighing, r.Displayed, r.TrueMassInGrams, r.ShiftInGrams)),
            ],
            new PackTruth(planted, group.Truth.TogetherInGrams),
            group.Series);
    }
}
