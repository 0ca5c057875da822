using Calx.Chemistry.Elements;
using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model.Simulation;

/// <summary>
/// A practical made ready to invent groups: the model run forwards. Made once for a class and safe for several threads. A
/// group follows from the seed and its number alone.
/// </summary>
internal sealed class GroupDrawer
{
    /// <summary>Draws after which a cause that never counts alone is given up.</summary>
    public const int MostAttempts = 20_000;

    private readonly FaultSet[] sets;
    private readonly double[] cumulative;
    private readonly Dictionary<FaultSet, PreparedSet> prepared;
    private readonly FaultSet? wanted;

    /// <summary>Makes it ready.</summary>
    /// <param name="circumstances">The practical and what is said of the class.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="plan">What the class does.</param>
    /// <param name="tables">Quantiles already worked out for other plans; null starts anew.</param>
    /// <exception cref="ArgumentException">The plan's cause is none of the practical's.</exception>
    /// <exception cref="CannotSimulateException">The plan sets the sample's mass, and no amount is the sample.</exception>
    public GroupDrawer(Circumstances circumstances, AtomicWeights weights, SimulationPlan plan, LawTableCache? tables = null)
    {
        Practical practical = circumstances.Practical;
        Circumstances = circumstances;
        Weights = weights;
        Plan = plan;
        Program = new BenchProgram(practical, weights);
        Rule = new CauseRule(circumstances, Program, weights);
        Space = new LatentSpace(circumstances, Program);
        Laws = new LawTables(circumstances, tables ?? new LawTableCache());
        Most = Math.Max(1, Program.Dimensions.Rounds - 1);
        ByRule = plan.Rounds == 0 && practical.Findings.ConstantMass is not null;
        int fewest = plan.Rounds == 0 ? (ByRule ? 2 : 1) : plan.Rounds;
        First = Math.Min(fewest, Most);
        string? repeated = practical.Findings.ConstantMass?.Reading;
        Displays = practical.Readings.ToDictionary(r => r.Id, r => new ReadingDisplay(r, plan.Balance), StringComparer.Ordinal);
        Instruments = [.. practical.Readings.Where(r => !r.IsWeighing).Select(r => r.Gauge!).Distinct()];
        Views = [.. Enumerable.Range(1, Most).Select(r => new RoundsView(this, r, repeated))];
        Among = ByRule ? AmongFirst(practical.Findings.ConstantMass!.Reading) : int.MaxValue;
        SampleScale = plan.SampleInGrams is double sample ? sample / MiddleOfSample() : 1;
        wanted = plan.Cause is null ? null : FaultSet.Of(FaultOf(practical, plan.Cause));
        double divisions = practical.Findings.ConstantMass?.ToleranceInDivisions ?? 0;
        Tolerance = (decimal)(divisions * plan.Balance.ResolutionInGrams);
        // A millionth of a step lets two whole divisions be two, whatever binary fractions make of them.
        ToleranceInSteps = (long)(divisions + 1e-6);
        var prior = new FaultPrior(plan.SampleInGrams is double grams ? circumstances.ForSample(grams) : circumstances);
        sets = [.. prior.Sets.Select(s => s.Set)];
        cumulative = new double[sets.Length];
        double sum = 0;
        for (int i = 0; i < sets.Length; i++)
        {
            cumulative[i] = sum += prior.Sets[i].Probability;
        }

        prepared = sets.Append(wanted ?? FaultSet.None).Distinct()
            .ToDictionary(s => s, s => new PreparedSet(s, Space, Laws, practical, Program.Dimensions.RangeOf));
        MostEven = prepared.Values.Max(s => s.Even);
    }

    public Circumstances Circumstances { get; }

    public AtomicWeights Weights { get; }

    public SimulationPlan Plan { get; }

    public BenchProgram Program { get; }

    public CauseRule Rule { get; }

    public LatentSpace Space { get; }

    public LawTables Laws { get; }

    /// <summary>Most rounds.</summary>
    public int Most { get; }

    /// <summary>Rounds that every group does.</summary>
    public int First { get; }

    /// <summary>Whether the readings decide how often a group heats again.</summary>
    public bool ByRule { get; }

    /// <summary>What befalls a weighing befalls one of the first so many. Where the readings decide on more rounds, they do
    /// so after it: nothing that comes later can have been there before.</summary>
    public int Among { get; }

    /// <summary>The practical through 1, 2 ... rounds.</summary>
    public RoundsView[] Views { get; }

    /// <summary>Place of the amount that is the sample, in the practical's parameters; -1 where the sample is no amount.</summary>
    public int Sample { get; private set; } = -1;

    /// <summary>How much more than usual the sample is.</summary>
    public double SampleScale { get; }

    /// <summary>Greatest difference of two weighings that counts as none, in g.</summary>
    public decimal Tolerance { get; }

    /// <summary>The same in whole steps of the display.</summary>
    public long ToleranceInSteps { get; }

    /// <summary>What each reading is taken with, by its id.</summary>
    public IReadOnlyDictionary<string, ReadingDisplay> Displays { get; }

    /// <summary>Ids of the gauges that are read: each with an instrument of its own.</summary>
    public string[] Instruments { get; }

    /// <summary>Most evenly drawn numbers that a group needs.</summary>
    public int MostEven { get; }

    /// <summary>Draws what the groups of a class share, for <see cref="GroupBench.Shared"/>.</summary>
    /// <param name="seed">The class's seed.</param>
    /// <param name="stream">A stream of random numbers that no group has.</param>
    public double[] SharedOf(ulong seed, ulong stream)
    {
        double[] even = new double[Program.Dimensions.Count];
        new RandomStream(seed, stream).Fill(even);
        return even;
    }

    /// <summary>A set of faults made ready.</summary>
    public PreparedSet Prepared(FaultSet set) => prepared[set];

    /// <summary>Draws the faults of a group.</summary>
    public FaultSet NextSet(RandomStream random) => SetOf(random.NextDouble());

    /// <summary>Draws a group.</summary>
    /// <param name="seed">The class's seed.</param>
    /// <param name="stream">The group's stream of random numbers.</param>
    /// <param name="number">The group's number.</param>
    /// <param name="shared">What its class shares; null for a group of a class of its own.</param>
    /// <exception cref="CannotSimulateException">The plan's cause never counted.</exception>
    public SimulatedGroup Draw(ulong seed, ulong stream, int number, double[]? shared = null)
    {
        var random = new RandomStream(seed, stream);
        for (int attempt = 0; attempt < MostAttempts; attempt++)
        {
            FaultSet set = wanted ?? NextSet(random);
            if (GroupDraw.Group(this, set, random, number, shared) is SimulatedGroup group
                && (wanted is null || group.Truth.Counting == wanted))
            {
                return group;
            }
        }

        throw CannotSimulateException.CauseTooSmall(Plan.Cause ?? Causes.AsExpected, MostAttempts);
    }

    private static int FaultOf(Practical practical, string cause)
    {
        for (int f = 0; f < practical.Faults.Count; f++)
        {
            if (practical.Faults[f].Cause == cause)
            {
                return f;
            }
        }

        throw new ArgumentException($"{practical.Id} has no cause '{cause}'.", nameof(cause));
    }

    private FaultSet SetOf(double even)
    {
        int at = Array.BinarySearch(cumulative, even);
        return sets[Math.Min(at < 0 ? ~at : at + 1, sets.Length - 1)];
    }

    private int AmongFirst(string reading)
    {
        IReadOnlyList<Weighing> weighings = Views[First - 1].Weighings;
        int last = weighings.Select((w, i) => w.Reading == reading ? i : -1).Max();
        return last + 1;
    }

    /// <summary>The sample's usual mass: that of the amount that the sample quantity follows.</summary>
    private double MiddleOfSample()
    {
        int amount = Rule.SampleAmount();
        if (amount < 0)
        {
            throw CannotSimulateException.NoSample(Circumstances.Practical.Id);
        }

        Sample = Rule.Amounts.Parameters[amount];
        return Rule.MiddleSample(amount);
    }
}
