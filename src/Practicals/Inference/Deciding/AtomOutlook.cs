using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>What one way in which a group's readings may have come about says of what would come next: how far the key
/// quantity would still move, and what further weighings would show.</summary>
internal sealed class AtomOutlook
{
    private readonly HiddenGroups hidden;
    private readonly GroupProblem problem;
    private readonly BenchProgram program;
    private readonly BenchState state;
    private readonly CompiledFormula key;
    private readonly Dictionary<string, int> keySlots;
    private readonly double[] keyReadings;
    private readonly double[] walk;
    private readonly double[] now;
    private readonly double[] later;
    private readonly IReadOnlyList<Weighing> laterWeighings;
    private readonly double[] shift;
    private readonly double[] ideals;
    private readonly int rounds;

    public AtomOutlook(HiddenGroups hidden, GroupProblem problem, AtomicWeights weights)
    {
        Practical practical = hidden.Circumstances.Practical;
        this.hidden = hidden;
        this.problem = problem;
        program = hidden.Program;
        state = program.NewState();
        rounds = problem.View.Rounds;
        keySlots = practical.Readings.Select((r, i) => (r.Id, i)).ToDictionary(StringComparer.Ordinal);
        keyReadings = new double[keySlots.Count];
        key = Formulas.Compile(
            practical.Quantities.First(q => q.Id == practical.Findings.Key).Formula,
            keySlots,
            formula => Formula.Parse(formula).Value.MolarMass(weights).Value);
        walk = new double[program.Dimensions.Count];
        now = new double[problem.View.Weighings.Count];
        laterWeighings = program.Weighings(rounds + 1, beyond: 1);
        later = new double[laterWeighings.Count];
        shift = new double[laterWeighings.Count];
        ideals = [.. practical.Parameters.Select(p => p.Ideal ?? LawQuantile.Median(p.Law))];
        Next = Enumerable.Range(0, laterWeighings.Count).LastOrDefault(
            i => laterWeighings[i].Occurrence == rounds + 1, -1);
    }

    /// <summary>Place of the weighing that one more round would bring, or -1 where nothing is repeated.</summary>
    public int Next { get; }

    /// <summary>How far the key quantity of the true masses would still move if all that can react did.</summary>
    public double StillToMove(Atom atom)
    {
        Put(atom);
        program.Walk(walk, rounds, state, now);
        double before = Key(atom, now, problem.View.Weighings);
        for (int p = 0; p < ideals.Length; p++)
        {
            if (program.Dimensions.IsEachRound(p))
            {
                walk[program.Dimensions.IndexOf(p, rounds)] = ideals[p];
            }
        }

        program.Walk(walk, rounds + 1, state, later, beyond: 1);
        return Math.Abs(Key(atom, later, laterWeighings) - before);
    }

    /// <summary>How far the warmth at the last weighing moves the key quantity.</summary>
    public double MovedByWarmth(Atom atom)
    {
        int last = LastRepeated();
        double grams = last < 0 ? 0 : ShiftAt(atom, last, warmth: true);
        if (grams == 0)
        {
            return 0;
        }

        Put(atom);
        program.Walk(walk, rounds, state, now);
        double cold = Key(atom, now, problem.View.Weighings);
        now[last] += grams;
        return Math.Abs(Key(atom, now, problem.View.Weighings) - cold);
    }

    /// <summary>What one more round, cooled and weighed, would show, in g.</summary>
    public double AfterReheat(Atom atom)
    {
        Put(atom);
        program.Walk(walk, rounds + 1, state, later, beyond: 1);
        return later[Next] + Parts(atom, problem.View.Weighings.Count - 1) + Lasting(atom) - MissingPart(atom);
    }

    /// <summary>What the same weighed again, now cold, would show, in g.</summary>
    public double AfterCooling(Atom atom)
    {
        int last = LastRepeated();
        Put(atom);
        program.Walk(walk, rounds, state, now);
        return now[last] + Parts(atom, last) + Lasting(atom) - MissingPart(atom);
    }

    /// <summary>What the balance would show with nothing on it, in g.</summary>
    public double ZeroOf(Atom atom)
    {
        double sum = 0;
        foreach (int fault in atom.Set.Faults)
        {
            if (hidden.Circumstances.Practical.Faults[fault].Effect is FaultEffect.Zero)
            {
                hidden.Space.Shift(atom.Set, fault, hidden.EvenOf(atom.Point, atom.Set), hidden.Tables.Of, laterWeighings, shift, now.Length);
                sum += shift[^1];
            }
        }

        return sum;
    }

    /// <summary>Place of the last weighing of the repeated reading, or -1.</summary>
    public int LastRepeated() => Enumerable.Range(0, now.Length).LastOrDefault(i => problem.View.Weighings[i].Occurrence == rounds
        && Next >= 0 && problem.View.Weighings[i].Reading == laterWeighings[Next].Reading, -1);

    private void Put(Atom atom) =>
        problem.View.PutAmounts(atom.Point, atom.Estimates.AsSpan(problem.Unknowns.Parts), walk);

    private double Parts(Atom atom, int weighing)
    {
        double sum = 0;
        for (int c = problem.Unknowns.Instruments; c < problem.Unknowns.Parts; c++)
        {
            sum += problem.Unknowns.PartAt(weighing, c) * atom.Estimates[c];
        }

        return sum;
    }

    private double Key(Atom atom, double[] masses, IReadOnlyList<Weighing> weighings)
    {
        for (int i = 0; i < weighings.Count; i++)
        {
            // All rounds of a reading have the same parts on the pan.
            keyReadings[keySlots[weighings[i].Reading]] = masses[i] + Parts(atom, Math.Min(i, problem.View.Weighings.Count - 1));
        }

        return key(keyReadings);
    }

    /// <summary>What soot or a zero set anew still adds to the next weighing.</summary>
    private double Lasting(Atom atom)
    {
        double sum = 0;
        foreach (int fault in atom.Set.Faults)
        {
            if (hidden.Circumstances.Practical.Faults[fault].Effect is FaultEffect.Zero or FaultEffect.Gain)
            {
                hidden.Space.Shift(atom.Set, fault, hidden.EvenOf(atom.Point, atom.Set), hidden.Tables.Of, laterWeighings, shift, now.Length);
                sum += shift[^1];
            }
        }

        return sum;
    }

    private double ShiftAt(Atom atom, int weighing, bool warmth)
    {
        double sum = 0;
        foreach (int fault in atom.Set.Faults)
        {
            if (hidden.Circumstances.Practical.Faults[fault].Effect is FaultEffect.Warm == warmth)
            {
                hidden.Space.Shift(
                    atom.Set, fault, hidden.EvenOf(atom.Point, atom.Set), hidden.Tables.Of, problem.View.Weighings, shift.AsSpan(0, now.Length));
                sum += shift[weighing];
            }
        }

        return sum;
    }

    /// <summary>A part missing at several weighings up to the last is taken to be broken: it stays away.</summary>
    private static double MissingPart(Atom atom) =>
        atom.Disturbance is Disturbance.PartOff { Rows.Count: > 1 } off ? off.MassInGrams : 0;
}
