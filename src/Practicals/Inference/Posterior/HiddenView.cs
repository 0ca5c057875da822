using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// The points seen through one number of rounds. Given a point, each weighing without its parts is a straight line in the
/// amounts put in: an intercept, and a slope for each amount. (Exact where masses are sums of products; where a reagent
/// runs out, the secant about the usual amounts.)
/// </summary>
internal sealed class HiddenView
{
    private readonly HiddenGroups hidden;
    private readonly AmountCentre centre;
    private readonly double[] usualAmounts;
    private readonly double[] sample;
    private readonly PointEffects?[] effects;

    /// <summary>Looks at the points.</summary>
    /// <param name="hidden">The points.</param>
    /// <param name="rounds">Rounds of heating.</param>
    /// <param name="centre">About which amounts lines are straight.</param>
    /// <param name="widths">How far points stand apart, where that is known.</param>
    public HiddenView(HiddenGroups hidden, int rounds, AmountCentre centre, double[]? widths)
    {
        this.hidden = hidden;
        this.centre = centre;
        Rounds = rounds;
        Weighings = hidden.Program.Weighings(rounds);
        Amounts = hidden.Rule.Amounts.Count;
        Coefficients = hidden.Rule.CoefficientsOf(Weighings);
        sample = hidden.Rule.SampleCoefficientsOf(Weighings);
        usualAmounts = centre.Amounts;
        Slopes = new double[hidden.Count * Weighings.Count * Amounts];
        Intercepts = new double[hidden.Count * Weighings.Count];
        effects = new PointEffects?[hidden.Count];
        BenchState state = hidden.Program.NewState();
        Widths = widths ?? new double[hidden.Count * Weighings.Count];
        var fresh = new List<HiddenBlock>();
        foreach (HiddenBlock block in hidden.Blocks)
        {
            if (hidden.Same(block) is (HiddenGroups other, HiddenBlock same))
            {
                Copy(other.View(rounds, centre), same, block, withWidths: widths is null);
                continue;
            }

            fresh.Add(block);
            for (int point = block.First; point < block.First + block.Count; point++)
            {
                Straighten(point, block.Set, state);
            }
        }

        if (widths is null)
        {
            PointWidths.Fill(Widths, fresh, Intercepts, Slopes, usualAmounts, [.. Weighings.Select(w => ScaleOf(hidden.Circumstances.Practical.Reading(w.Reading)))]);
        }

        Table = new PointTable(Weighings.Count, Amounts, Slopes, Intercepts, Widths);
    }

    /// <summary>Rounds of heating.</summary>
    public int Rounds { get; }

    /// <summary>The weighings, in order.</summary>
    public IReadOnlyList<Weighing> Weighings { get; }

    /// <summary>How many amounts are put in.</summary>
    public int Amounts { get; }

    /// <summary>The key difference's coefficient at each weighing.</summary>
    public double[] Coefficients { get; }

    /// <summary>g per g of each amount: point by point, weighing by weighing, amount by amount.</summary>
    public double[] Slopes { get; }

    /// <summary>g: point by point, weighing by weighing; what shifts the readings included.</summary>
    public double[] Intercepts { get; }

    /// <summary>The lines of all points.</summary>
    public PointTable Table { get; }

    /// <summary>g²: point by point, weighing by weighing; for how much of the mass's law a point stands.</summary>
    public double[] Widths { get; }

    /// <summary>How far each fault moved the key difference at a point. Worked out when first asked for: most points are
    /// never near any group.</summary>
    public PointEffects EffectsOf(int point, FaultSet set)
    {
        if (Volatile.Read(ref effects[point]) is PointEffects known)
        {
            return known;
        }

        // Two threads may work out the same; the results are the same too.
        PointEffects worked = Effects(point, set);
        Volatile.Write(ref effects[point], worked);
        return worked;
    }

    /// <summary>Mass of the sample at a point, in g, as true masses would tell it.</summary>
    public double SampleOf(int point, ReadOnlySpan<double> amounts)
    {
        double sum = hidden.Rule.SampleOffset;
        for (int i = 0; i < sample.Length; i++)
        {
            int at = (point * sample.Length) + i;
            double mass = Intercepts[at];
            for (int a = 0; a < Amounts; a++)
            {
                mass += Slopes[(at * Amounts) + a] * amounts[a];
            }

            sum += sample[i] * mass;
        }

        return sum;
    }

    /// <summary>The weighings of a point for given amounts and rounds, without parts and shifts.</summary>
    /// <param name="point">The point.</param>
    /// <param name="amounts">In g.</param>
    /// <param name="walk">The numbers of the walk, changed by the caller where it wants; receives the amounts.</param>
    public void PutAmounts(int point, ReadOnlySpan<double> amounts, Span<double> walk)
    {
        hidden.ValuesOf(point).CopyTo(walk);
        for (int a = 0; a < Amounts; a++)
        {
            walk[hidden.Program.Dimensions.RangeOf(hidden.Rule.Amounts.Parameters[a])].Fill(amounts[a]);
        }
    }

    /// <summary>How far apart two points are is told in g; what a gauge shows counts as many steps of a usual balance as it is
    /// standard deviations of its own instrument.</summary>
    private static double ScaleOf(ReadingDefinition reading) =>
        reading.Errors is InstrumentErrors errors ? (double)BalanceReport.DefaultResolutionInGrams / Math.Sqrt(errors.ReadingVariance(errors.Step.Grams)) : 1;

    private void Copy(HiddenView other, HiddenBlock from, HiddenBlock block, bool withWidths)
    {
        int n = Weighings.Count;
        other.Intercepts.AsSpan(from.First * n, block.Count * n).CopyTo(Intercepts.AsSpan(block.First * n));
        other.Slopes.AsSpan(from.First * n * Amounts, block.Count * n * Amounts).CopyTo(Slopes.AsSpan(block.First * n * Amounts));
        if (withWidths)
        {
            other.Widths.AsSpan(from.First * n, block.Count * n).CopyTo(Widths.AsSpan(block.First * n));
        }
    }

    private void Straighten(int point, FaultSet set, BenchState state)
    {
        int n = Weighings.Count;
        double[] walk = new double[hidden.Program.Dimensions.Count];
        Span<double> at = Intercepts.AsSpan(point * n, n);
        PutAmounts(point, usualAmounts, walk);
        hidden.Program.Walk(walk, Rounds, state, at);
        Span<double> moved = stackalloc double[n];
        double[] amounts = [.. usualAmounts];
        for (int a = 0; a < Amounts; a++)
        {
            double step = centre.Steps[a];
            amounts[a] = usualAmounts[a] + step;
            PutAmounts(point, amounts, walk);
            hidden.Program.Walk(walk, Rounds, state, moved);
            amounts[a] = usualAmounts[a];
            for (int i = 0; i < n; i++)
            {
                Slopes[(((point * n) + i) * Amounts) + a] = (moved[i] - at[i]) / step;
            }
        }

        for (int i = 0; i < n; i++)
        {
            for (int a = 0; a < Amounts; a++)
            {
                at[i] -= Slopes[(((point * n) + i) * Amounts) + a] * usualAmounts[a];
            }
        }

        AddShifts(point, set, at, moved);
    }

    private void AddShifts(int point, FaultSet set, Span<double> at, Span<double> shift)
    {
        foreach (int fault in set.Faults)
        {
            hidden.Space.Shift(set, fault, hidden.EvenOf(point, set), hidden.Tables.Of, Weighings, shift);
            for (int i = 0; i < at.Length; i++)
            {
                at[i] += shift[i];
            }
        }
    }

    private PointEffects Effects(int point, FaultSet set)
    {
        int faults = hidden.Circumstances.Practical.Faults.Count;
        double[] walk = new double[hidden.Program.Dimensions.Count];
        double[] intercepts = new double[faults + 1];
        double[] slopes = new double[(faults + 1) * Amounts];
        double[] shifts = new double[faults];
        PutAmounts(point, usualAmounts, walk);
        intercepts[faults] = hidden.Rule.Contributions(walk, set, Rounds, intercepts.AsSpan(0, faults));
        double[] moved = new double[faults + 1];
        double[] amounts = [.. usualAmounts];
        double[] start = [.. intercepts];
        for (int a = 0; a < Amounts; a++)
        {
            double step = centre.Steps[a];
            amounts[a] = usualAmounts[a] + step;
            PutAmounts(point, amounts, walk);
            moved[faults] = hidden.Rule.Contributions(walk, set, Rounds, moved.AsSpan(0, faults));
            amounts[a] = usualAmounts[a];
            for (int f = 0; f <= faults; f++)
            {
                double slope = (moved[f] - start[f]) / step;
                slopes[(f * Amounts) + a] = slope;
                intercepts[f] -= slope * usualAmounts[a];
            }
        }

        double[] shift = new double[Weighings.Count];
        foreach (int fault in set.Faults)
        {
            hidden.Space.Shift(set, fault, hidden.EvenOf(point, set), hidden.Tables.Of, Weighings, shift);
            for (int i = 0; i < shift.Length; i++)
            {
                shifts[fault] += Coefficients[i] * shift[i];
            }

            intercepts[fault] += shifts[fault];
            intercepts[faults] += shifts[fault];
        }

        return new PointEffects(intercepts, slopes);
    }
}
