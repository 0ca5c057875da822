using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>What probably happened in one group, given what it wrote down and noted.</summary>
public sealed class CausePosterior
{
    /// <summary>Pairs below this are not listed.</summary>
    private const double LeastPair = 0.001;

    internal CausePosterior(HiddenGroups hidden, GroupProblem problem, IReadOnlyList<Atom> atoms, double logEvidence, EngineLanguage language)
    {
        Hidden = hidden;
        Problem = problem;
        Atoms = atoms;
        LogEvidence = logEvidence;
        Language = language;
        Practical practical = hidden.Circumstances.Practical;
        var probability = new double[practical.Faults.Count];
        var pairs = new Dictionary<FaultSet, double>();
        foreach (Atom atom in atoms)
        {
            int count = atom.Counting.Count;
            AsExpected += count == 0 ? atom.Weight : 0;
            foreach (int fault in atom.Counting.Faults)
            {
                probability[fault] += atom.Weight / count;
            }

            if (count == 2)
            {
                pairs[atom.Counting] = pairs.GetValueOrDefault(atom.Counting) + atom.Weight;
            }
        }

        var sizes = new CauseSizes(this);
        AsExpected = Math.Min(1, AsExpected);
        Causes =
        [
            .. practical.Faults.Select((fault, f) => sizes.Describe(f, Math.Min(1, probability[f])))
                .Append(new CauseProbability(Definition.Causes.AsExpected, new CauseTexts(language).AsExpected, AsExpected, AsExpected))
                .OrderByDescending(c => c.Probability),
        ];
        Pairs =
        [
            .. pairs.Where(p => p.Value >= LeastPair).OrderByDescending(p => p.Value).ThenBy(p => p.Key.Bits)
                .Select(p => new CausePair(practical.Faults[p.Key.Faults.First()].Cause, practical.Faults[p.Key.Faults.Last()].Cause, Math.Min(1, p.Value))),
        ];
        Tied = TieRule.Of(this);
    }

    /// <summary>Every cause of the practical and 'as-expected', the likeliest first; their probabilities add up to 1.</summary>
    public IReadOnlyList<CauseProbability> Causes { get; }

    /// <summary>Pairs of causes with a probability of at least a thousandth, the likeliest first.</summary>
    public IReadOnlyList<CausePair> Pairs { get; }

    /// <summary>Sets of causes that the weighings cannot tell apart; most often none or one.</summary>
    public IReadOnlyList<TiedCauses> Tied { get; }

    /// <summary>Probability that nothing moved the result by more than counts.</summary>
    public double AsExpected { get; }

    /// <summary>Natural logarithm of the density of the readings (in 1/g each) and of the observations under the practical's
    /// model.</summary>
    public double LogEvidence { get; }

    /// <summary>Probability that each fault of the practical is at work, whether it counts or not; never quite 0 or 1.</summary>
    internal double[] AtWork()
    {
        double[] shares = new double[Hidden.Circumstances.Practical.Faults.Count];
        foreach (Atom atom in Atoms)
        {
            foreach (int fault in atom.Set.Faults)
            {
                shares[fault] += atom.Weight;
            }

            if (atom.Disturbance is Disturbance disturbance)
            {
                shares[disturbance.Fault] += atom.Weight;
            }
        }

        return [.. shares.Select(s => Math.Clamp(s, 1e-12, 1 - 1e-12))];
    }

    /// <summary>The same group in a class whose groups share a fault: the odds that it is at work here are multiplied.</summary>
    internal CausePosterior InClassSharing(int fault)
    {
        double factor = SharedCauseSearch.OddsFactor(Hidden, fault);
        double sum = Atoms.Sum(a => a.Weight * FactorOf(a));
        return new CausePosterior(
            Hidden, Problem, [.. Atoms.Select(a => a.With(a.Weight * FactorOf(a) / sum))], LogEvidence + Math.Log(sum), Language);

        double FactorOf(Atom atom) => atom.Set.Has(fault) || atom.Disturbance?.Fault == fault ? factor : 1;
    }

    /// <summary>The language of what is said of it.</summary>
    internal EngineLanguage Language { get; }

    internal HiddenGroups Hidden { get; }

    internal GroupProblem Problem { get; }

    internal IReadOnlyList<Atom> Atoms { get; }
}
