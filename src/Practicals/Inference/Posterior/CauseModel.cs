using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// A practical's model made ready to be read backwards: from what a group wrote down to what probably happened. Made once
/// for a class; safe for several threads. See docs/methods/causes.md.
/// </summary>
public sealed class CauseModel
{
    /// <summary>How much wider than the practical's own spread the amount put in is taken to scatter: a class may follow
    /// another sheet (judgement).</summary>
    private const double AmountSpread = 2;

    private readonly RoundingRatios ratios = new();
    private readonly AtomicWeights weights;
    private readonly bool looksTwice;

    /// <summary>Makes a practical ready for a class.</summary>
    /// <param name="circumstances">The class's circumstances.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="language">The language of what is said of causes; British where nothing else is said.</param>
    public CauseModel(Circumstances circumstances, AtomicWeights weights, EngineLanguage? language = null)
        : this(circumstances, weights, density: 1, language)
    {
    }

    /// <summary>The same with more or fewer points; those who want few have no second look either.</summary>
    internal CauseModel(Circumstances circumstances, AtomicWeights weights, double density, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(circumstances);
        this.weights = weights;
        Language = (language ?? EngineLanguage.British).For(circumstances.Practical);
        Hidden = new HiddenGroups(circumstances, weights, density);
        looksTwice = density >= 1;
    }

    /// <summary>The practical.</summary>
    public Practical Practical => Hidden.Circumstances.Practical;

    internal HiddenGroups Hidden { get; }

    internal EngineLanguage Language { get; }

    /// <summary>A molar mass in g/mol.</summary>
    internal double MolarMass(string formula) => Formula.Parse(formula).Value.MolarMass(weights).Value;

    /// <summary>What probably happened in one group.</summary>
    /// <param name="group">What the group wrote down and noted; any of the readings may be missing.</param>
    /// <param name="balance">The balance.</param>
    /// <param name="classmates">What the class says of it; null for a group by itself.</param>
    public CausePosterior Of(GroupReadings group, BalanceReport balance, Classmates? classmates = null)
    {
        ArgumentNullException.ThrowIfNull(group);
        ArgumentNullException.ThrowIfNull(balance);
        return Of(
            group,
            balance,
            classmates?.Priors ?? UsualAmounts(),
            classmates?.NoteObservations ?? group.Remarks.Observations.Count > 0);
    }

    /// <summary>The same under given priors of the amounts.</summary>
    internal CausePosterior Of(GroupReadings group, BalanceReport balance, IReadOnlyList<AmountPrior> amounts, bool silenceCounts)
    {
        (GroupProblem problem, IReadOnlyList<Atom> atoms, double logEvidence) = Look(Hidden);
        if (!looksTwice || SecondLook.SetsFor(atoms) is not { Count: > 0 } sets)
        {
            return new CausePosterior(Hidden, problem, atoms, logEvidence, Language);
        }

        HiddenGroups finer = Hidden.Finer(sets);
        (problem, atoms, logEvidence) = Look(finer);
        return new CausePosterior(finer, problem, atoms, logEvidence, Language);

        (GroupProblem Problem, IReadOnlyList<Atom> Atoms, double LogEvidence) Look(HiddenGroups hidden)
        {
            GroupProblem problem = GroupProblem.Of(hidden, group, balance, amounts, silenceCounts, weights);
            IReadOnlyList<Atom> atoms = CauseSearch.Of(hidden, problem);
            return (problem, atoms, AtomWeighing.Finish(hidden, problem, atoms, ratios));
        }
    }

    /// <summary>The amounts that a plan puts in, with the spread of a class that helps itself.</summary>
    /// <param name="sampleInGrams">The plan's sample, in g.</param>
    internal IReadOnlyList<AmountPrior> PlannedAmounts(double sampleInGrams)
    {
        IReadOnlyList<AmountPrior> usual = UsualAmounts();
        double relative = Practical.Amounts is AmountsDefinition amounts ? sampleInGrams / amounts.UsualInGrams : 1;
        return [.. usual.Select((prior, a) => a == Hidden.SampleAmount ? new AmountPrior(prior.Mean * relative, prior.StandardDeviation * relative) : prior)];
    }

    /// <summary>The practical's own amounts, their spread widened.</summary>
    internal IReadOnlyList<AmountPrior> UsualAmounts(double spread = AmountSpread) =>
    [
        .. Hidden.Rule.Amounts.Parameters.Select(p => Hidden.Circumstances.LawOf(p)).Select(law =>
            new AmountPrior(LawQuantile.Median(law), spread * SpreadOf(law))),
    ];

    /// <summary>Half the width of the middle 68 %; a twentieth of the middle where the law is fixed.</summary>
    internal static double SpreadOf(ParameterLaw law) => law switch
    {
        ParameterLaw.Normal normal => normal.StandardDeviation,
        ParameterLaw.Fixed known => Math.Max(Math.Abs(known.Value) / 20, 1e-6),
        _ => Math.Max((LawQuantile.Of(law, 0.84) - LawQuantile.Of(law, 0.16)) / 2, 1e-6),
    };

    /// <summary>What a class says of each of its groups.</summary>
    /// <param name="groups">The class.</param>
    public Classmates ClassmatesOf(IReadOnlyList<GroupReadings> groups) => Classmates.Of(this, groups);
}
