using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;
using Calx.Practicals.Model.Slips;

namespace Calx.Practicals.Model.Simulation;

/// <summary>
/// A bench on which one invented group after another is drawn: first what is hidden, then round after round what it weighs
/// and writes. Nothing is made anew for a group, so that a lesson of twelve takes microseconds. One belongs to one thread.
/// </summary>
internal sealed class GroupBench
{
    private readonly GroupDrawer drawer;
    private readonly Practical practical;
    private readonly BenchState state;
    private readonly double[] even;
    private readonly double[] noise;
    private readonly double[] shift;
    private readonly double[] sum;
    private readonly long[] steps;
    private readonly double[] off;
    private readonly Func<ParameterLaw, double, double> quantile;
    private Befallen part;
    private Befallen pen;
    private WrittenNumber slipped;

    public GroupBench(GroupDrawer drawer)
    {
        this.drawer = drawer;
        practical = drawer.Circumstances.Practical;
        state = drawer.Program.NewState();
        int most = drawer.Views[^1].Weighings.Count;
        even = new double[drawer.MostEven];
        Values = new double[drawer.Program.Dimensions.Count];
        PartsInGrams = new double[practical.Parts.Count];
        (noise, shift, sum) = (new double[most], new double[most], new double[most]);
        MassesInGrams = new double[most];
        steps = new long[most];
        off = new double[2 * drawer.Instruments.Length];
        Differences = new double[practical.Faults.Count];
        quantile = drawer.Laws.Of;
        View = drawer.Views[0];
    }

    /// <summary>An evenly drawn number for each number of the walk, from which the whole class takes those that it shares; null where the
    /// group is in a class of its own.</summary>
    public double[]? Shared { get; set; }

    /// <summary>The faults at work.</summary>
    public FaultSet Set { get; private set; }

    /// <summary>The numbers of the walk.</summary>
    public double[] Values { get; }

    /// <summary>Mass of each part.</summary>
    public double[] PartsInGrams { get; }

    /// <summary>The weighings that the group took.</summary>
    public RoundsView View { get; private set; }

    /// <summary>What was to be weighed at each, parts included, or what the gauge was at.</summary>
    public double[] MassesInGrams { get; }

    /// <summary>How far each fault that adds to a weighing moves the key difference.</summary>
    public double[] Differences { get; }

    /// <summary>Place of the weighing that was written down wrongly, or -1.</summary>
    public int Slip { get; private set; }

    /// <summary>What faults add to a weighing.</summary>
    public double ShiftInGrams(int weighing) => sum[weighing];

    /// <summary>What the balance or other instrument showed.</summary>
    public WrittenNumber Displayed(int weighing) => View.Displays[weighing].Displayed(steps[weighing]);

    /// <summary>What the group wrote.</summary>
    public WrittenNumber Written(int weighing) => weighing == Slip ? slipped : Displayed(weighing);

    /// <summary>The same as a double, in the unit of the reading.</summary>
    public double WrittenValue(int weighing) =>
        weighing == Slip ? slipped.AsDouble : View.Displays[weighing].ValueOf(steps[weighing]);

    /// <summary>Draws a group.</summary>
    /// <param name="set">The faults at work.</param>
    /// <param name="random">The group's random numbers.</param>
    /// <returns>False where the bench has no answer to these numbers.</returns>
    public bool Draw(FaultSet set, RandomStream random)
    {
        Set = set;
        PreparedSet prepared = drawer.Prepared(set);
        random.Fill(even.AsSpan(0, prepared.Even));
        if (Shared is not null)
        {
            foreach (int i in prepared.Shared)
            {
                even[i] = Shared[i];
            }
        }

        for (int i = 0; i < Values.Length; i++)
        {
            Values[i] = prepared.Quantiles[i](even[i]);
        }

        PutAmounts(prepared, random);
        for (int p = 0; p < PartsInGrams.Length; p++)
        {
            PartsInGrams[p] = MassOf(practical.Parts[p].Mass, random);
        }

        random.FillNormal(noise);
        part = new Befallen(random.NextDouble(), random.NextDouble());
        pen = new Befallen(random.NextDouble(), random.NextDouble());
        for (int i = 0; i < off.Length; i++)
        {
            off[i] = (2 * random.NextDouble()) - 1;
        }

        for (int rounds = drawer.First; ; rounds++)
        {
            View = drawer.Views[rounds - 1];
            if (!Weigh(prepared))
            {
                return false;
            }

            if (!drawer.ByRule || rounds == drawer.Most || IsConstant())
            {
                return true;
            }
        }
    }

    /// <summary>How far shifts move the key difference.</summary>
    /// <param name="shifts">Of each weighing.</param>
    /// <param name="ownSize">Takes the largest shift itself where later weighings replaced all that are shifted.</param>
    public double Moved(ReadOnlySpan<double> shifts, bool ownSize)
    {
        double moved = 0;
        double largest = 0;
        bool replaced = true;
        for (int i = 0; i < View.Weighings.Count; i++)
        {
            moved += View.Coefficients[i] * shifts[i];
            replaced &= shifts[i] == 0 || View.Coefficients[i] == 0;
            largest = Math.Abs(shifts[i]) > Math.Abs(largest) ? shifts[i] : largest;
        }

        return replaced && ownSize ? largest : moved;
    }

    private void PutAmounts(PreparedSet prepared, RandomStream random)
    {
        for (int a = 0; a < drawer.Rule.Amounts.Count; a++)
        {
            int p = drawer.Rule.Amounts.Parameters[a];
            Range range = drawer.Program.Dimensions.RangeOf(p);
            for (int i = range.Start.Value; i < range.End.Value; i++)
            {
                for (int redrawn = 0; Values[i] <= 0 && drawer.Rule.Amounts.IsPutIn(a); redrawn++)
                {
                    Values[i] = redrawn < GroupDrawer.MostAttempts
                        ? prepared.Quantiles[i](random.NextDouble())
                        : throw CannotSimulateException.NoAmount(practical.Parameters[p].Id);
                }

                Values[i] *= p == drawer.Sample ? drawer.SampleScale : 1;
            }
        }
    }

    private static double MassOf(MassRange range, RandomStream random) => range.High > range.Low
        ? LawQuantile.Triangular(range.Low, range.Typical, range.High, random.NextDouble())
        : range.Typical;

    private bool Weigh(PreparedSet prepared)
    {
        int count = View.Weighings.Count;
        drawer.Program.Walk(Values, View.Rounds, state, MassesInGrams);
        Shift(prepared, count);
        for (int i = 0; i < count; i++)
        {
            foreach (int p in View.Parts[i])
            {
                MassesInGrams[i] += PartsInGrams[p];
            }

            ReadingDisplay display = View.Displays[i];
            double signal = MassesInGrams[i] + sum[i] + (display.Spread * noise[View.NoiseAt[i]]);
            if (View.Instruments[i] >= 0)
            {
                signal += (display.Tolerance * off[2 * View.Instruments[i]]) + (display.ScaleTolerance * off[(2 * View.Instruments[i]) + 1] * MassesInGrams[i]);
            }

            if (!double.IsFinite(signal))
            {
                return false;
            }

            steps[i] = display.StepsOf(signal);
        }

        Slip = prepared.Pen is null ? -1 : (int)(pen.Where * Math.Min(drawer.Among, count));
        if (Slip >= 0)
        {
            slipped = PenSlips.Write(Displayed(Slip), prepared.Pen!, pen.How);
        }

        return true;
    }

    /// <summary>What faults add to each weighing; how far each moves the key difference is kept.</summary>
    private void Shift(PreparedSet prepared, int count)
    {
        Array.Clear(sum);
        Array.Clear(Differences);
        foreach (int fault in prepared.Faults)
        {
            bool off = practical.Faults[fault].Effect is FaultEffect.Off;
            if (off)
            {
                PartOff((FaultEffect.Off)practical.Faults[fault].Effect, count);
            }
            else
            {
                drawer.Space.Shift(Set, fault, even, quantile, View.Weighings, shift.AsSpan(0, count), Math.Min(drawer.Among, count));
            }

            Differences[fault] = Moved(shift, ownSize: off);
            for (int i = 0; i < count; i++)
            {
                sum[i] += shift[i];
            }
        }
    }

    /// <summary>A part is missing at one of the weighings that should have it, or, as likely, at that and all later ones.</summary>
    private void PartOff(FaultEffect.Off off, int count)
    {
        Array.Clear(shift);
        int missing = practical.Parts.Select((p, i) => (p, i)).First(x => x.p.Id == off.Part).i;
        int[] at = [.. Enumerable.Range(0, count).Where(i => View.Parts[i].Contains(missing))];
        int among = at.Count(i => i < drawer.Among);
        int first = (int)(part.Where * among);
        for (int k = first; among > 0 && k < (part.How < 0.5 ? at.Length : first + 1); k++)
        {
            shift[at[k]] = -PartsInGrams[missing];
        }
    }

    /// <summary>The trade's rule on what the group wrote.</summary>
    private bool IsConstant()
    {
        (int before, int last) = View.LastTwo;
        if (before < 0)
        {
            return false;
        }

        return Slip == before || Slip == last
            ? Math.Abs(Written(last).Value - Written(before).Value) <= drawer.Tolerance
            : Math.Abs(steps[last] - steps[before]) <= drawer.ToleranceInSteps;
    }

    /// <summary>Where among the weighings a fault strikes, and how: two evenly drawn numbers.</summary>
    private readonly record struct Befallen(double Where, double How);
}
