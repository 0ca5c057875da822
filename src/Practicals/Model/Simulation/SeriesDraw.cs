using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Program;
using Calx.Practicals.Model.Slips;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Model.Simulation;

/// <summary>
/// Mass against time of an invented group: the bench walked through to each planned time, with what the balance does to a mass,
/// a draught that points near in time share, and now and then a slip of the pen. First and last point are the group's own readings.
/// </summary>
internal sealed class SeriesDraw
{
    private readonly GroupDrawer drawer;
    private readonly GroupBench bench;
    private readonly SeriesDefinition series;
    private readonly Practical practical;

    private SeriesDraw(GroupDrawer drawer, GroupBench bench, SeriesDefinition series)
    {
        (this.drawer, this.bench, this.series) = (drawer, bench, series);
        practical = drawer.Circumstances.Practical;
    }

    /// <summary>Draws the points of a group, as written and as the balance showed them; null where the practical takes no series.</summary>
    public static (GroupSeries Written, GroupSeries Displayed)? Of(GroupDrawer drawer, GroupBench bench, RandomStream random) =>
        drawer.Circumstances.Practical.Series is SeriesDefinition series ? new SeriesDraw(drawer, bench, series).Points(random) : null;

    /// <summary>What is on the pan at each planned time, parts and shifts included, without scatter.</summary>
    internal static double[] MassesInGrams(GroupDrawer drawer, GroupBench bench, SeriesDefinition series) =>
        new SeriesDraw(drawer, bench, series).Masses(series.TimesInMinutes);

    private (GroupSeries Written, GroupSeries Displayed) Points(RandomStream random)
    {
        IReadOnlyList<double> times = series.TimesInMinutes;
        double[] masses = Masses(times);
        double[] noise = new double[times.Count];
        random.FillNormal(noise);
        double[] draught = Draught(times, random);
        int fault = practical.Faults.Select((f, i) => (f.Effect, i)).Where(f => f.Effect is FaultEffect.Pen).Select(f => f.i).DefaultIfEmpty(-1).First();
        FaultEffect.Pen? pen = fault < 0 ? null : (FaultEffect.Pen)practical.Faults[fault].Effect;
        double rate = fault < 0 ? 0 : drawer.Circumstances.RateOf(fault);
        (double slips, double where, double how) = (random.NextDouble(), random.NextDouble(), random.NextDouble());
        int slipped = slips < rate ? 1 + (int)(where * (times.Count - 2)) : -1;
        Balance balance = drawer.Plan.Balance;
        var points = new List<SeriesPoint> { Point(0, bench.Written(Place(series.From))) };
        var displayed = new List<SeriesPoint>();
        for (int i = 1; i < times.Count - 1; i++)
        {
            double signal = masses[i] + (balance.RepeatabilityInGrams * noise[i]) + draught[i];
            WrittenNumber shown = balance.Displayed(balance.StepsOf(signal));
            points.Add(Point(times[i], i == slipped ? PenSlips.Write(shown, pen!, how) : shown));
            displayed.Add(Point(times[i], shown));
        }

        points.Add(Point(series.UntilInMinutes, bench.Written(Place(series.To))));
        return (new GroupSeries(points, isLoss: false), new GroupSeries(displayed, isLoss: false));
    }

    private SeriesPoint Point(double minutes, WrittenNumber written) => new(SeriesTable.TimeOf((decimal)minutes, series), written);

    private int Place(string reading)
    {
        int place = 0;
        while (bench.View.Weighings[place].Reading != reading)
        {
            place++;
        }

        return place;
    }

    private double[] Masses(IReadOnlyList<double> times)
    {
        int from = Place(series.From);
        int to = Place(series.To);
        double[] values = [.. bench.Values];
        double[] masses = new double[bench.View.Weighings.Count];
        BenchState state = drawer.Program.NewState();
        int elapsed = drawer.Program.Dimensions.IndexOf(practical.Parameters.Select((p, i) => (p.Id, i)).First(p => p.Id == series.Elapsed).i, 0);
        double parts = bench.View.Parts[to].Sum(p => bench.PartsInGrams[p]);
        double shift = ShiftBetween(from, to);
        double[] all = new double[times.Count];
        for (int i = 0; i < all.Length; i++)
        {
            values[elapsed] = times[i];
            drawer.Program.Walk(values, bench.View.Rounds, state, masses);
            all[i] = (i == 0 ? masses[from] : masses[to]) + parts + shift;
        }

        return all;
    }

    /// <summary>What befell first and last reading alike befell those between; a part that is missing at the last was left off at the
    /// start; anything else befell one weighing.</summary>
    private double ShiftBetween(int from, int to)
    {
        bool partOff = bench.Set.Faults.Any(f => practical.Faults[f].Effect is FaultEffect.Off);
        return partOff || bench.ShiftInGrams(from) == bench.ShiftInGrams(to) ? bench.ShiftInGrams(to) : 0;
    }

    private double[] Draught(IReadOnlyList<double> times, RandomStream random)
    {
        double[] draught = new double[times.Count];
        if (series.Scatter is not SeriesScatter scatter)
        {
            return draught;
        }

        random.FillNormal(draught);
        double kept = Math.Exp(-series.EveryInMinutes / scatter.LastsInMinutes);
        draught[0] *= scatter.DraughtInGrams;
        for (int i = 1; i < draught.Length; i++)
        {
            draught[i] = (kept * draught[i - 1]) + (Math.Sqrt(1 - (kept * kept)) * scatter.DraughtInGrams * draught[i]);
        }

        return draught;
    }
}
