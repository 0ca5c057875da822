using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;
using Calx.Practicals.Model.Slips;

namespace Calx.Practicals.Model.Simulation;

/// <summary>One invented group: first what is hidden, then round after round what it weighs and writes.</summary>
internal sealed class GroupDraw
{
    private readonly GroupDrawer drawer;
    private readonly Practical practical;
    private readonly FaultSet set;
    private readonly RandomStream random;
    private readonly double[] even;
    private readonly double[] values;
    private readonly double[] parts;
    private readonly double[] noise;
    private readonly BenchState state;
    private readonly Befallen part;
    private readonly Befallen pen;
    private readonly double[] differences;

    public GroupDraw(GroupDrawer drawer, FaultSet set, RandomStream random)
    {
        this.drawer = drawer;
        this.set = set;
        this.random = random;
        practical = drawer.Circumstances.Practical;
        state = drawer.Program.NewState();
        differences = new double[practical.Faults.Count];
        even = new double[drawer.Space.CountOf(set)];
        random.Fill(even);
        values = new double[drawer.Program.Dimensions.Count];
        drawer.Space.Values(set, even, drawer.Laws.Of, values);
        PutAmounts();
        parts = [.. practical.Parts.Select(p => MassOf(p.Mass))];
        noise = new double[drawer.Views[^1].Weighings.Count];
        random.FillNormal(noise);
        part = new Befallen(random.NextDouble(), random.NextDouble());
        pen = new Befallen(random.NextDouble(), random.NextDouble());
    }

    /// <summary>The group, or null where the bench has no answer to these numbers.</summary>
    public SimulatedGroup? Group(int number)
    {
        for (int rounds = drawer.First; ; rounds++)
        {
            RoundsView view = drawer.Views[rounds - 1];
            if (Weighed(view) is not SimulatedReading[] readings)
            {
                return null;
            }

            if (!drawer.ByRule || rounds == drawer.Most || IsConstant(readings))
            {
                SimulatedTruth truth = Truth(view, readings);
                return new SimulatedGroup(number, practical, truth, parts, readings, Noted(truth.Counting));
            }
        }
    }

    private void PutAmounts()
    {
        foreach (int p in drawer.Rule.Amounts)
        {
            ParameterLaw law = drawer.Space.LawOf(set, p);
            Range range = drawer.Program.Dimensions.RangeOf(p);
            for (int i = range.Start.Value; i < range.End.Value; i++)
            {
                for (int redrawn = 0; values[i] <= 0; redrawn++)
                {
                    values[i] = redrawn < GroupDrawer.MostAttempts
                        ? drawer.Laws.Of(law, random.NextDouble())
                        : throw CannotSimulateException.NoAmount(practical.Parameters[p].Id);
                }

                values[i] *= p == drawer.Sample ? drawer.SampleScale : 1;
            }
        }
    }

    private double MassOf(MassRange range) => range.High > range.Low
        ? LawQuantile.Of(new ParameterLaw.Triangular(range.Low, range.Typical, range.High), random.NextDouble())
        : range.Typical;

    private SimulatedReading[]? Weighed(RoundsView view)
    {
        int count = view.Weighings.Count;
        double[] masses = new double[count];
        drawer.Program.Walk(values, view.Rounds, state, masses);
        double[] shifts = Shifts(view);
        var readings = new SimulatedReading[count];
        int slip = SlipAt(count);
        for (int i = 0; i < count; i++)
        {
            foreach (int p in view.Parts[i])
            {
                masses[i] += parts[p];
            }

            double signal = masses[i] + shifts[i] + (drawer.Plan.Balance.RepeatabilityInGrams * noise[view.NoiseAt[i]]);
            if (!double.IsFinite(signal))
            {
                return null;
            }

            WrittenNumber displayed = drawer.Plan.Balance.Display(signal);
            readings[i] = new SimulatedReading(view.Weighings[i], masses[i], shifts[i], displayed, i == slip ? Written(displayed) : displayed);
        }

        return readings;
    }

    /// <summary>What faults add to each weighing; how far each moves the key difference is kept.</summary>
    private double[] Shifts(RoundsView view)
    {
        int count = view.Weighings.Count;
        double[] sum = new double[count];
        double[] shift = new double[count];
        Array.Clear(differences);
        foreach (int fault in set.Faults)
        {
            if (practical.Faults[fault].Effect is FaultEffect.Off off)
            {
                PartOff(off, view, shift);
            }
            else
            {
                drawer.Space.Shift(set, fault, even, drawer.Laws.Of, view.Weighings, shift, Math.Min(drawer.Among, count));
            }

            differences[fault] = Moved(view, shift, ownSize: practical.Faults[fault].Effect is FaultEffect.Off);
            for (int i = 0; i < count; i++)
            {
                sum[i] += shift[i];
            }
        }

        return sum;
    }

    /// <summary>A part is missing at one of the weighings that should have it, or, as likely, at that and all later ones.</summary>
    private void PartOff(FaultEffect.Off off, RoundsView view, double[] shift)
    {
        Array.Clear(shift);
        int missing = practical.Parts.Select((p, i) => (p, i)).First(x => x.p.Id == off.Part).i;
        int[] at = [.. Enumerable.Range(0, shift.Length).Where(i => view.Parts[i].Contains(missing))];
        int among = at.Count(i => i < drawer.Among);
        if (among == 0)
        {
            return;
        }

        int first = (int)(part.Where * among);
        for (int k = first; k < (part.How < 0.5 ? at.Length : first + 1); k++)
        {
            shift[at[k]] = -parts[missing];
        }
    }

    private int SlipAt(int count) =>
        set.Faults.Any(f => practical.Faults[f].Effect is FaultEffect.Pen) ? (int)(pen.Where * Math.Min(drawer.Among, count)) : -1;

    private WrittenNumber Written(WrittenNumber displayed)
    {
        FaultEffect.Pen shares = practical.Faults.Select(f => f.Effect).OfType<FaultEffect.Pen>().First();
        return PenSlips.Write(displayed, shares, pen.How);
    }

    /// <summary>The trade's rule on what the group wrote.</summary>
    private bool IsConstant(SimulatedReading[] readings)
    {
        ConstantMassDefinition rule = practical.Findings.ConstantMass!;
        SimulatedReading[] last = [.. readings.Where(r => r.Weighing.Reading == rule.Reading).TakeLast(2)];
        decimal tolerance = (decimal)(rule.ToleranceInDivisions * drawer.Plan.Balance.ResolutionInGrams);
        return last.Length == 2 && Math.Abs(last[1].Written.Value - last[0].Written.Value) <= tolerance;
    }

    private SimulatedTruth Truth(RoundsView view, SimulatedReading[] readings)
    {
        double[] moved = new double[practical.Faults.Count];
        double together = drawer.Rule.Contributions(values, set, view.Rounds, moved);
        double[] slips = [.. readings.Select(r => (double)(r.Written.Value - r.Displayed.Value))];
        double sample = 0;
        for (int i = 0; i < readings.Length; i++)
        {
            together += view.Coefficients[i] * (readings[i].ShiftInGrams + slips[i]);
            sample += view.SampleCoefficients[i] * readings[i].TrueMassInGrams;
        }

        foreach (int fault in set.Faults)
        {
            moved[fault] += practical.Faults[fault].Effect is FaultEffect.Pen ? Moved(view, slips, ownSize: true) : differences[fault];
        }

        double threshold = drawer.Rule.Threshold(sample, drawer.Plan.Balance.ResolutionInGrams);
        return new SimulatedTruth(practical, set, CauseRule.Counting(moved, together, threshold), moved, together, values);
    }

    /// <summary>How far shifts move the key difference.</summary>
    /// <param name="view">The weighings.</param>
    /// <param name="shift">Of each.</param>
    /// <param name="ownSize">Takes the largest shift itself where later weighings replaced all that are shifted.</param>
    private static double Moved(RoundsView view, double[] shift, bool ownSize)
    {
        double moved = 0;
        double largest = 0;
        bool replaced = true;
        for (int i = 0; i < shift.Length; i++)
        {
            moved += view.Coefficients[i] * shift[i];
            replaced &= shift[i] == 0 || view.Coefficients[i] == 0;
            largest = Math.Abs(shift[i]) > Math.Abs(largest) ? shift[i] : largest;
        }

        return replaced && ownSize ? largest : moved;
    }

    private string[] Noted(FaultSet counting) => !drawer.Plan.NotesObservations ? [] :
    [
        .. practical.Observations.Where(o => !o.Stop && !o.TeacherOnly)
            .Where(o => random.NextDouble() < ObservationRule.Noted(practical, o, counting))
            .Select(o => o.Id),
    ];

    /// <summary>Where among the weighings a fault strikes, and how: two evenly drawn numbers.</summary>
    private readonly record struct Befallen(double Where, double How);
}
