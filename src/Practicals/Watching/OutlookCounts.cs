using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>What simulated lessons came to, each at its own place, so that threads do not matter.</summary>
internal sealed class OutlookCounts(int lessons, int groups, int things, LessonMoment moment, double gasOff)
{
    private readonly LessonOutcome[] outcomes = new LessonOutcome[lessons];
    private readonly double[,] waited = new double[things, lessons];
    private readonly double[,] longest = new double[things, lessons];
    private readonly double[,] used = new double[things, lessons];
    private readonly double[,] done = new double[groups, lessons];
    private readonly double[,] next = new double[groups, lessons];
    private readonly double[,] last = new double[groups, lessons];
    private readonly int[,] place = new int[groups, lessons];

    /// <summary>How many.</summary>
    public int Lessons => lessons;

    /// <summary>Everything by the bell, and every flame out in time.</summary>
    public Share Fits => Share.Of(outcomes.Count(o => o.End <= moment.Bell && o.FlameOut <= moment.Bell - gasOff), lessons);

    /// <summary>Everything by the bell.</summary>
    public Share OnTime => Share.Of(outcomes.Count(o => o.End <= moment.Bell), lessons);

    /// <summary>Every flame out in time.</summary>
    public Share GasOffInTime => Share.Of(outcomes.Count(o => o.FlameOut <= moment.Bell - gasOff), lessons);

    /// <summary>Every reading by the time of packing.</summary>
    public Share WeighedInTime => Share.Of(outcomes.Count(o => o.Weighed <= Packing), lessons);

    /// <summary>When everything is done.</summary>
    public MinuteRange End => MinuteRange.Of([.. outcomes.Select(o => o.End)]);

    private double Packing => moment.Bell - LessonForecast.PackingMinutes;

    /// <summary>Notes one.</summary>
    public void Note(int lesson, LessonOutcome outcome, LessonRun run, int[] places)
    {
        outcomes[lesson] = outcome;
        for (int i = 0; i < things; i++)
        {
            waited[i, lesson] = run.Shared[i].WaitedMinutes;
            longest[i, lesson] = run.Shared[i].LongestWait;
            double minutes = Math.Max(outcome.End - moment.Now, 1e-9);
            used[i, lesson] = Math.Min(1, run.Shared[i].BusyMinutes / (run.Shared[i].Units * minutes));
        }

        for (int g = 0; g < groups; g++)
        {
            done[g, lesson] = run.Minutes[g].Ready;
            next[g, lesson] = run.Minutes[g].NextRead;
            last[g, lesson] = run.Minutes[g].LastRead;
            place[g, lesson] = places[g];
        }
    }

    /// <summary>How a thing is used in what is left.</summary>
    public ThingUse UseOf(int thing, SharedThing what, int working) =>
        new(what, Row(waited, thing).Average() / Math.Max(1, working), Row(longest, thing).Average(), Row(used, thing).Average());

    /// <summary>When a group is done.</summary>
    public MinuteRange DoneOf(int group) => MinuteRange.Of(Row(done, group));

    /// <summary>When it has taken its next reading; null where half of the lessons have none.</summary>
    public MinuteRange? NextOf(int group)
    {
        double[] some = [.. Row(next, group).Where(m => m > 0)];
        return 2 * some.Length <= lessons ? null : MinuteRange.Of(some);
    }

    /// <summary>Its last reading by the time of packing; nothing left to read is in time.</summary>
    public Share PackedOf(int group) => Share.Of(Row(last, group).Count(m => m <= Packing || m == 0), lessons);

    /// <summary>The place at which it is most often now.</summary>
    public int PlaceOf(int group) => Enumerable.Range(0, lessons).GroupBy(l => place[group, l])
        .OrderByDescending(p => p.Count()).ThenBy(p => p.Key).First().Key;

    /// <summary>In how many of the lessons each group is the last.</summary>
    public (int Group, double Share) Last(IReadOnlyList<int> working)
    {
        int[] times = new int[groups];
        for (int lesson = 0; lesson < lessons && working.Count > 0; lesson++)
        {
            times[working.MaxBy(g => done[g, lesson])]++;
        }

        int most = working.Count == 0 ? -1 : working.MaxBy(g => times[g]);
        return (most, most < 0 ? 0 : (double)times[most] / lessons);
    }

    private double[] Row(double[,] table, int row)
    {
        double[] values = new double[lessons];
        for (int i = 0; i < lessons; i++)
        {
            values[i] = table[row, i];
        }

        return values;
    }
}
