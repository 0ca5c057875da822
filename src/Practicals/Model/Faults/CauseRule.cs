using Calx.Chemistry.Elements;
using Calx.Measurement.Expressions;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model.Faults;

/// <summary>
/// When a cause counts: it moved the key difference, from the median of a group without faults, by more than the
/// practical's divisions of the balance or its share of the change that is due, whichever is larger. A slip of the pen or a
/// missing part counts in whichever weighing it stands (docs/methods/causes.md).
/// </summary>
internal sealed class CauseRule
{
    private const double UsualDivisions = 2;
    private const double UsualShare = 0.05;

    private readonly Circumstances circumstances;
    private readonly BenchProgram program;
    private readonly ReadingLine difference;
    private readonly ReadingLine sample;
    private readonly ReadingLine change;
    private readonly double divisions;
    private readonly double share;
    private readonly double[] medians;
    private readonly int[][] settersOf;
    private readonly int[] own;

    /// <summary>Prepares the rule of a practical.</summary>
    public CauseRule(Circumstances circumstances, BenchProgram program, AtomicWeights weights)
    {
        Practical practical = circumstances.Practical;
        this.circumstances = circumstances;
        this.program = program;
        divisions = practical.Findings.AsExpected?.Divisions ?? UsualDivisions;
        share = practical.Findings.AsExpected?.Share ?? UsualShare;
        WholeChangeOfOneGram = new IdealRun(practical, weights, circumstances.Arm).ChangeOfOneGram;
        medians = new double[program.Dimensions.Count];
        for (int p = 0; p < practical.Parameters.Count; p++)
        {
            medians.AsSpan(program.Dimensions.RangeOf(p)).Fill(LawQuantile.Median(circumstances.LawOf(p)));
        }

        var middle = new MiddleGroup(practical, program, medians);
        difference = ReadingLine.KeyDifference(practical, weights, WholeChangeOfOneGram, middle.Last);
        sample = ReadingLine.OfQuantity(practical, practical.Findings.Sample, weights, middle.Last);
        change = ReadingLine.OfQuantity(practical, practical.Findings.Change, weights, middle.Last);
        settersOf = [.. practical.Parameters.Select(p => SettersOf(practical, p.Id))];
        own = [.. Enumerable.Range(0, practical.Parameters.Count).Where(p => settersOf[p].Length == 0)];
        Amounts = new AmountList(practical, circumstances, program, p => settersOf[p].Length == 0);
    }

    /// <summary>What the groups put in and what their gauges are set to: a group's readings tell it, no fault sets it.</summary>
    public AmountList Amounts { get; }

    /// <summary>What the sample comes to where every reading is 0: not nothing where it is no plain sum of them.</summary>
    public double SampleOffset => sample.Offset;

    /// <summary>Whether a fault moves the change of mass at all: heat that goes past a can moves a temperature alone.</summary>
    public bool ReachesChange(int fault)
    {
        if (circumstances.Practical.Faults[fault].Effect is not FaultEffect.Set || !Amounts.HasGauges)
        {
            return true;
        }

        double[] moved = [.. medians];
        for (int p = 0; p < settersOf.Length; p++)
        {
            if (settersOf[p].Contains(fault))
            {
                FaultEffect.Set set = (FaultEffect.Set)circumstances.Practical.Faults[fault].Effect;
                moved.AsSpan(program.Dimensions.RangeOf(p)).Fill(LawQuantile.Of(
                    set.Settings.First(s => s.Parameter == circumstances.Practical.Parameters[p].Id).Law, 0.9));
            }
        }

        var walk = new Walk(program, 1, change.At(program.Weighings(rounds: 1)));
        return Math.Abs(walk.Difference(moved) - walk.Difference(medians)) > 1e-9;
    }

    /// <summary>Place among the amounts of the one that the sample follows; -1 where there is none.</summary>
    public int SampleAmount()
    {
        double[] coefficients = SampleCoefficientsOf(program.Weighings(rounds: 1));
        return Amounts.Followed(medians, read => SampleOffset + read.Select((value, i) => value * coefficients[i]).Sum());
    }

    /// <summary>The sample of a middling group, in g. What is no mass itself (a time, a current) is taken by what the sample
    /// comes to with it.</summary>
    /// <param name="amount">The amount that it follows.</param>
    public double MiddleSample(int amount)
    {
        if (Amounts.IsPutIn(amount))
        {
            return medians[program.Dimensions.RangeOf(Amounts.Parameters[amount]).Start];
        }

        double[] coefficients = SampleCoefficientsOf(program.Weighings(rounds: 1));
        double[] read = new double[coefficients.Length];
        program.Walk(medians, rounds: 1, program.NewState(), read);
        return SampleOffset + read.Select((value, i) => value * coefficients[i]).Sum();
    }

    /// <summary>The whole change of mass of 1 g of sample, signed.</summary>
    public double WholeChangeOfOneGram { get; }

    /// <summary>The key difference's coefficient at each weighing.</summary>
    public double[] CoefficientsOf(IReadOnlyList<Weighing> weighings) => difference.At(weighings);

    /// <summary>The sample's coefficient at each weighing.</summary>
    public double[] SampleCoefficientsOf(IReadOnlyList<Weighing> weighings) => sample.At(weighings);

    /// <summary>How far in g a cause must move the key difference to count.</summary>
    /// <param name="sampleInGrams">Mass of the sample.</param>
    /// <param name="divisionInGrams">The balance's step.</param>
    public double Threshold(double sampleInGrams, double divisionInGrams) =>
        Math.Max(divisions * divisionInGrams, share * Math.Abs(WholeChangeOfOneGram * sampleInGrams));

    /// <summary>Whether even a middling group without faults leaves more of the change that is due undone than counts: what a
    /// cause leaves then comes on top.</summary>
    public bool IsUsuallyShort(int rounds)
    {
        IReadOnlyList<Weighing> weighings = program.Weighings(rounds);
        double whole = WholeChangeOfOneGram * new Walk(program, rounds, SampleCoefficientsOf(weighings)).Difference(medians);
        return -new Walk(program, rounds, CoefficientsOf(weighings)).Difference(medians) / whole > share;
    }

    /// <summary>How far each fault's parameters moved the key difference, in g, each taken alone with all others at their
    /// medians. What no fault sets is nobody's fault and stays as it is in the group.</summary>
    /// <param name="values">The numbers of the walk.</param>
    /// <param name="active">Faults at work: where several faults set one parameter, it is laid to the one at work.</param>
    /// <param name="rounds">Rounds of heating.</param>
    /// <param name="moved">Receives a number for each fault.</param>
    /// <returns>How far all together moved it, in g.</returns>
    public double Contributions(ReadOnlySpan<double> values, FaultSet active, int rounds, Span<double> moved)
    {
        IReadOnlyList<Weighing> weighings = program.Weighings(rounds);
        double[] coefficients = CoefficientsOf(weighings);
        double[] trial = [.. medians];
        CopyOwn(values, trial);
        var walk = new Walk(program, rounds, coefficients);
        double usual = walk.Difference(trial);
        moved.Clear();
        for (int fault = 0; fault < moved.Length; fault++)
        {
            if (circumstances.Practical.Faults[fault].Effect is not FaultEffect.Set)
            {
                continue;
            }

            medians.CopyTo(trial, 0);
            CopyOwn(values, trial);
            if (CopySet(fault, active, values, trial))
            {
                moved[fault] = walk.Difference(trial) - usual;
            }
        }

        return walk.Difference(values) - usual;
    }

    /// <summary>Which causes count.</summary>
    /// <param name="moved">How far each fault moved the key difference, in g.</param>
    /// <param name="together">How far all together moved it.</param>
    /// <param name="threshold">In g.</param>
    /// <returns>A set of faults; none where the group is as expected.</returns>
    public static FaultSet Counting(ReadOnlySpan<double> moved, double together, double threshold)
    {
        uint bits = 0;
        int largest = 0;
        for (int fault = 0; fault < moved.Length; fault++)
        {
            bits |= Math.Abs(moved[fault]) > threshold ? 1u << fault : 0;
            largest = Math.Abs(moved[fault]) > Math.Abs(moved[largest]) ? fault : largest;
        }

        // Many small things together spoil a result as well: the largest of them is named.
        return bits == 0 && Math.Abs(together) > threshold ? FaultSet.Of(largest) : new FaultSet(bits);
    }

    private static int[] SettersOf(Practical practical, string parameter) =>
    [
        .. Enumerable.Range(0, practical.Faults.Count).Where(f =>
            practical.Faults[f].Effect is FaultEffect.Set set && set.Settings.Any(s => s.Parameter == parameter)),
    ];

    private void CopyOwn(ReadOnlySpan<double> from, Span<double> to)
    {
        foreach (int p in own)
        {
            Range range = program.Dimensions.RangeOf(p);
            from[range].CopyTo(to[range]);
        }
    }

    /// <summary>Puts in the parameters that are laid to a fault; false where none is.</summary>
    private bool CopySet(int fault, FaultSet active, ReadOnlySpan<double> values, Span<double> trial)
    {
        bool any = false;
        for (int p = 0; p < settersOf.Length; p++)
        {
            int[] setters = settersOf[p];
            if (setters.Length == 0 || LaidTo(setters, active) != fault)
            {
                continue;
            }

            Range range = program.Dimensions.RangeOf(p);
            values[range].CopyTo(trial[range]);
            any = true;
        }

        return any;
    }

    private static int LaidTo(int[] setters, FaultSet active)
    {
        foreach (int setter in setters)
        {
            if (active.Has(setter))
            {
                return setter;
            }
        }

        return setters[0];
    }

    private sealed class Walk(BenchProgram program, int rounds, double[] coefficients)
    {
        private readonly BenchState state = program.NewState();
        private readonly double[] masses = new double[coefficients.Length];

        public double Difference(ReadOnlySpan<double> values)
        {
            program.Walk(values, rounds, state, masses);
            double sum = 0;
            for (int i = 0; i < masses.Length; i++)
            {
                sum += coefficients[i] * masses[i];
            }

            return sum;
        }
    }
}
