using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Model.Simulation;

/// <summary>One invented group as it is handed over, with all that is true of it.</summary>
internal static class GroupDraw
{
    /// <summary>Draws it, or null where the bench has no answer to these numbers.</summary>
    public static SimulatedGroup? Group(GroupDrawer drawer, FaultSet set, RandomStream random, int number, double[]? shared = null)
    {
        var bench = new GroupBench(drawer) { Shared = shared };
        if (!bench.Draw(set, random))
        {
            return null;
        }

        Practical practical = drawer.Circumstances.Practical;
        SimulatedReading[] readings = [.. bench.View.Weighings.Select((w, i) => new SimulatedReading(
            w, bench.MassesInGrams[i], bench.ShiftInGrams(i), bench.Displayed(i), bench.Written(i)))];
        SimulatedTruth truth = Truth(drawer, bench, readings);
        string[] noted = Noted(drawer, truth.Counting, random);
        return new SimulatedGroup(number, practical, truth, bench.PartsInGrams, readings, noted, SeriesDraw.Of(drawer, bench, random), drawer.Circumstances.Arm);
    }

    private static SimulatedTruth Truth(GroupDrawer drawer, GroupBench bench, SimulatedReading[] readings)
    {
        Practical practical = drawer.Circumstances.Practical;
        RoundsView view = bench.View;
        double[] moved = new double[practical.Faults.Count];
        double together = drawer.Rule.Contributions(bench.Values, bench.Set, view.Rounds, moved);
        double[] slips = [.. readings.Select(r => (double)(r.Written.Value - r.Displayed.Value))];
        double sample = drawer.Rule.SampleOffset;
        for (int i = 0; i < readings.Length; i++)
        {
            together += view.Coefficients[i] * (readings[i].ShiftInGrams + slips[i]);
            sample += view.SampleCoefficients[i] * readings[i].TrueMassInGrams;
        }

        foreach (int fault in bench.Set.Faults)
        {
            moved[fault] += practical.Faults[fault].Effect is FaultEffect.Pen ? bench.Moved(slips, ownSize: true) : bench.Differences[fault];
        }

        double threshold = drawer.Rule.Threshold(sample, drawer.Plan.Balance.ResolutionInGrams);
        return new SimulatedTruth(practical, bench.Set, CauseRule.Counting(moved, together, threshold), moved, together, bench.Values);
    }

    private static string[] Noted(GroupDrawer drawer, FaultSet counting, RandomStream random) => !drawer.Plan.NotesObservations ? [] :
    [
        .. drawer.Circumstances.Practical.Observations.Where(o => !o.Stop && !o.TeacherOnly)
            .Where(o => random.NextDouble() < ObservationRule.Noted(drawer.Circumstances.Practical, o, counting))
            .Select(o => o.Id),
    ];
}
