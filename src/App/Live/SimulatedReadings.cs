using System.Collections.Concurrent;
using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.App.Live;

/// <summary>
/// What a simulated balance shows to a group that lost its sample: a set of readings from the practical's model, faults and all,
/// so that there is something to decide. It goes to the last heating that the practical allows, whatever the group decides.
/// </summary>
/// <param name="plan">The lesson's plan.</param>
/// <param name="seedOf">The seed of a group's set by its number: the same class and group get the same set each time.</param>
public sealed class SimulatedReadings(PlanSettings plan, Func<int, ulong> seedOf)
{
    private readonly ConcurrentDictionary<(int Group, double Resolution), IReadOnlyDictionary<string, string>> sets = [];

    /// <summary>What the display shows, by the reading's id; empty where the practical's readings cannot be simulated.</summary>
    /// <param name="group">The group, with the balance whose decimals it is used to.</param>
    public IReadOnlyDictionary<string, string> DisplaysOf(GroupAtWork group) =>
        sets.GetOrAdd((group.Number, group.Balance.ResolutionInGrams), _ => Draw(group));

    private Dictionary<string, string> Draw(GroupAtWork group)
    {
        try
        {
            SimulatedClass drawn = SimulatedClass.Draw(
                new Circumstances(plan.Practical, plan.AllConditions),
                AtomicWeights.Iupac2024,
                new SimulationPlan(1, group.Balance, PlanSettings.MostHeatings(plan.Practical), notesObservations: false),
                seedOf(group.Number),
                threads: 1);
            SimulatedGroup one = drawn.Groups[0];
            var displays = one.Readings.ToDictionary(r => TakenReading.IdOf(r.Weighing.Reading, r.Weighing.Occurrence), r => r.Displayed.ToString());
            foreach ((string id, WrittenNumber shown) in Points(one))
            {
                displays[id] = shown.ToString();
            }

            return displays;
        }
        catch (CannotSimulateException)
        {
            return [];
        }
    }

    /// <summary>Mass against time between its first and last point, which are readings of the sheet.</summary>
    private IEnumerable<(string Id, WrittenNumber Shown)> Points(SimulatedGroup group) => plan.Practical.Series is not SeriesDefinition series ? []
        : series.TimesInMinutes.Join(
            group.DisplayedPoints, series.TimeText, p => p.Time.Value.ToString("0.####", CultureInfo.InvariantCulture), (t, p) => (series.PointId(t), p.Value));
}
