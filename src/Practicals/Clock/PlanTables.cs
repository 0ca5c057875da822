using System.Collections.Concurrent;
using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.Clock;

/// <summary>What all plans that are compared have in common, worked out once: laws of durations, and what draws groups. Safe for
/// several threads.</summary>
internal sealed class PlanTables(AtomicWeights weights)
{
    private readonly LawTableCache laws = new();
    private readonly ConcurrentDictionary<string, Lazy<GroupDrawer>> drawers = new(StringComparer.Ordinal);

    /// <summary>Atomic weights for the molar masses.</summary>
    public AtomicWeights Weights { get; } = weights;

    /// <summary>Laws of durations.</summary>
    public DurationTable Durations { get; } = new();

    /// <summary>What draws the readings of a plan's groups, one for each balance.</summary>
    public GroupDrawer[] DrawersOf(PlanSettings settings) => [.. settings.Balances.Select(balance => DrawerOf(settings, balance))];

    private GroupDrawer DrawerOf(PlanSettings settings, Balance balance)
    {
        // Twice, and again while the mass changes, is the trade's rule; once or the most possible is a fixed number.
        int rounds = settings.Heatings == 2 && settings.Practical.Findings.ConstantMass is not null ? 0 : settings.Heatings;
        double? sample = settings.Practical.Amounts is null ? null : settings.SampleInGrams;
        string key = string.Create(
            CultureInfo.InvariantCulture,
            $"{balance.ResolutionInGrams:R} {balance.RepeatabilityInDivisions:R} {rounds} {sample:R} {string.Join(' ', settings.AllConditions)}");
        return drawers.GetOrAdd(key, _ => new Lazy<GroupDrawer>(() => new GroupDrawer(
            new Circumstances(settings.Practical, settings.AllConditions),
            Weights,
            new SimulationPlan(1, balance, rounds, sampleInGrams: sample, notesObservations: false),
            laws))).Value;
    }
}
