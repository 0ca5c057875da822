using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// What may be hidden in a group, laid out evenly under the practical's laws: for each set of faults that act on the bench
/// or the balance, points whose weights add up to the set's prior probability. Worked out once for a class; every group
/// is held against the same points, so results do not depend on any draw.
/// </summary>
internal sealed class HiddenGroups
{
    private const int PointsWithoutFault = 1024;
    private const int PointsOfOne = 640;
    private const int PointsOfTwo = 200;

    /// <summary>How many times as many points a set has at a second look.</summary>
    public const int TimesFiner = 8;

    private readonly Dictionary<string, HiddenGroups> finer = [];
    private readonly HiddenGroups[] laidOut;
    private readonly Dictionary<(int Rounds, string Centre), HiddenView> views = [];
    private readonly double[] values;
    private readonly double[] even;
    private readonly int[] evenFirst;
    private readonly int width;

    /// <summary>Lays them out.</summary>
    /// <param name="circumstances">The class's circumstances.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="density">Points for each set, relative to the usual number.</param>
    public HiddenGroups(Circumstances circumstances, AtomicWeights weights, double density = 1)
    {
        Circumstances = circumstances;
        Program = new BenchProgram(circumstances.Practical, weights);
        Rule = new CauseRule(circumstances, Program, weights);
        Space = new LatentSpace(circumstances, Program);
        Prior = new FaultPrior(circumstances);
        SampleAmount = Rule.Amounts.Count == 1 ? 0 : Rule.SampleAmount();
        width = Program.Dimensions.Count;
        Tables = new QuantileTables();
        laidOut = [];
        uint special = Special(circumstances.Practical);
        (Blocks, Count) = Lay([.. Prior.Sets.Where(s => (s.Set.Bits & special) == 0)
            .Select(s => (s.Set, s.Probability, Math.Max(1, (int)(UsualPoints(s.Set) * density))))]);
        values = new double[Count * width];
        evenFirst = new int[Count];
        even = new double[Blocks.Sum(b => b.Count * Space.CountOf(b.Set))];
        LayOut();
    }

    /// <summary>The same groups with more points for some sets.</summary>
    private HiddenGroups(HiddenGroups coarse, HashSet<FaultSet> dense)
    {
        // The points of each set are laid out once, whatever they are looked at together with.
        laidOut = [coarse, .. dense.Count > 1 ? dense.OrderBy(s => s.Bits).Select(s => coarse.Finer([s])) : []];
        (Circumstances, Program, Rule, Space, Prior, SampleAmount) = (coarse.Circumstances, coarse.Program, coarse.Rule, coarse.Space, coarse.Prior, coarse.SampleAmount);
        (Tables, width) = (coarse.Tables, coarse.width);
        (Blocks, Count) = Lay([.. coarse.Blocks.Select(b => (b.Set, Math.Exp(b.LogWeight) * b.Count, dense.Contains(b.Set) ? TimesFiner * b.Count : b.Count))]);
        values = new double[Count * width];
        evenFirst = new int[Count];
        even = new double[Blocks.Sum(b => b.Count * Space.CountOf(b.Set))];
        LayOut();
    }

    /// <summary>The class's circumstances.</summary>
    public Circumstances Circumstances { get; }

    /// <summary>The practical's procedure.</summary>
    public BenchProgram Program { get; }

    /// <summary>When a cause counts.</summary>
    public CauseRule Rule { get; }

    /// <summary>How hidden numbers become groups.</summary>
    public LatentSpace Space { get; }

    /// <summary>Prior probabilities of all sets of faults.</summary>
    public FaultPrior Prior { get; }

    /// <summary>Place among the amounts of the one that the sample follows; -1 where there is none.</summary>
    public int SampleAmount { get; }

    /// <summary>The laws' quantiles.</summary>
    public QuantileTables Tables { get; }

    /// <summary>The sets of faults that act on the bench or the balance, with their points: without faults first.</summary>
    public IReadOnlyList<HiddenBlock> Blocks { get; }

    /// <summary>How many points there are.</summary>
    public int Count { get; }

    /// <summary>Whether these are the points of a second look.</summary>
    public bool AreFiner => laidOut.Length > 0;

    /// <summary>Where the very points of a block are laid out already; null where they are not.</summary>
    public (HiddenGroups In, HiddenBlock Block)? Same(HiddenBlock block)
    {
        foreach (HiddenGroups other in laidOut)
        {
            if (other.Blocks.FirstOrDefault(b => b.Set == block.Set && b.Count == block.Count) is HiddenBlock same)
            {
                return (other, same);
            }
        }

        return null;
    }

    /// <summary>The same with more points for some sets, for groups whose readings single out a few. Kept: other groups of a
    /// class are looked at with the same.</summary>
    public HiddenGroups Finer(IReadOnlyCollection<FaultSet> sets)
    {
        string key = string.Join(' ', sets.Select(s => s.Bits).Order());
        lock (finer)
        {
            if (!finer.TryGetValue(key, out HiddenGroups? known))
            {
                finer[key] = known = new HiddenGroups(this, [.. sets]);
            }

            return known;
        }
    }

    /// <summary>The numbers of a point's walk.</summary>
    public ReadOnlySpan<double> ValuesOf(int point) => values.AsSpan(point * width, width);

    /// <summary>The evenly spread numbers behind a point.</summary>
    public ReadOnlySpan<double> EvenOf(int point, FaultSet set) => even.AsSpan(evenFirst[point], Space.CountOf(set));

    /// <summary>The points seen through so many rounds of heating.</summary>
    /// <param name="rounds">Rounds.</param>
    /// <param name="centre">About which amounts the readings are taken as straight lines; null takes the practical's own.</param>
    public HiddenView View(int rounds, AmountCentre? centre = null)
    {
        AmountCentre usual = AmountCentre.Usual(this);
        AmountCentre about = centre ?? usual;
        // How far points stand apart hardly depends on the centre, and is the dear part of a view.
        double[]? widths = about.Key == usual.Key ? null : View(rounds).Widths;
        lock (views)
        {
            if (!views.TryGetValue((rounds, about.Key), out HiddenView? view))
            {
                views[(rounds, about.Key)] = view = new HiddenView(this, rounds, about, widths);
            }

            return view;
        }
    }

    /// <summary>Slips of the pen and missing parts are no matter of points: each of their few cases is worked out.</summary>
    private static uint Special(Practical practical)
    {
        uint bits = 0;
        for (int f = 0; f < practical.Faults.Count; f++)
        {
            bits |= practical.Faults[f].Effect is FaultEffect.Pen or FaultEffect.Off ? 1u << f : 0;
        }

        return bits;
    }

    private static int UsualPoints(FaultSet set) => set.Count switch { 0 => PointsWithoutFault, 1 => PointsOfOne, _ => PointsOfTwo };

    private static (IReadOnlyList<HiddenBlock> Blocks, int Count) Lay(IReadOnlyList<(FaultSet Set, double Probability, int Count)> sets)
    {
        var blocks = new List<HiddenBlock>();
        int first = 0;
        foreach ((FaultSet set, double probability, int count) in sets)
        {
            blocks.Add(new HiddenBlock(set, first, count, Math.Log(probability / count)));
            first += count;
        }

        return (blocks, first);
    }

    private void LayOut()
    {
        int next = 0;
        foreach (HiddenBlock block in Blocks)
        {
            next = Same(block) is (HiddenGroups other, HiddenBlock same) ? Copy(other, same, block, next) : LayOut(block, next);
        }
    }

    private int Copy(HiddenGroups other, HiddenBlock from, HiddenBlock block, int next)
    {
        int count = Space.CountOf(block.Set);
        other.values.AsSpan(from.First * width, block.Count * width).CopyTo(values.AsSpan(block.First * width));
        other.even.AsSpan(other.evenFirst[from.First], block.Count * count).CopyTo(even.AsSpan(next));
        for (int k = 0; k < block.Count; k++)
        {
            evenFirst[block.First + k] = next + (k * count);
        }

        return next + (block.Count * count);
    }

    /// <summary>Numbers whose law is fixed take no coordinate: the fewer coordinates, the more even the points.</summary>
    private int LayOut(HiddenBlock block, int next)
    {
        int count = Space.CountOf(block.Set);
        int[] coordinate = new int[count];
        int coordinates = 0;
        for (int p = 0; p < Circumstances.Practical.Parameters.Count; p++)
        {
            bool known = Space.LawOf(block.Set, p) is ParameterLaw.Fixed || Rule.Amounts.Parameters.Contains(p);
            Range range = Program.Dimensions.RangeOf(p);
            for (int i = range.Start.Value; i < range.End.Value; i++)
            {
                coordinate[i] = known ? -1 : coordinates++;
            }
        }

        for (int i = width; i < count; i++)
        {
            coordinate[i] = coordinates++;
        }

        var points = new EvenPoints(coordinates);
        for (int k = 0; k < block.Count; k++)
        {
            Span<double> numbers = even.AsSpan(next, count);
            for (int i = 0; i < count; i++)
            {
                numbers[i] = coordinate[i] < 0 ? 0.5 : points.At(k, coordinate[i]);
            }

            evenFirst[block.First + k] = next;
            Space.Values(block.Set, numbers, Tables.Of, values.AsSpan((block.First + k) * width, width));
            next += count;
        }

        return next;
    }
}
