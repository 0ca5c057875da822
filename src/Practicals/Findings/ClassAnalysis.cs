using Calx.Chemistry.Amounts;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>From a class's readings to an honest result: the main job.</summary>
public static class ClassAnalysis
{
    /// <summary>Finds what a class's readings show.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="readings">The class's readings; at least one group.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="options">What is asked; null for all of it in an ordinary class.</param>
    /// <exception cref="ArgumentException">There is no group, a condition is not the practical's, or the readings are of another practical.</exception>
    public static ClassFindings Of(Practical practical, ClassReadings readings, AtomicWeights weights, AnalysisOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(readings);
        if (readings.Groups.Count == 0)
        {
            throw new ArgumentException("There is no group to analyse.", nameof(readings));
        }

        if (readings.PracticalId != practical.Id)
        {
            throw new ArgumentException($"The readings are of {readings.PracticalId}, not of {practical.Id}.", nameof(readings));
        }

        AnalysisOptions asked = options ?? AnalysisOptions.Usual;
        asked = asked with { Language = asked.Language.For(practical) };
        IReadOnlyList<ArmGroups> ways = ArmGroups.Of(practical, readings);
        return ways.Count == 1
            ? ArmWords.WithUnknown(OfOneWay(practical, readings, weights, asked, ways[0].Arm))
            : OfSeveralWays(practical, readings, weights, asked, ways);
    }

    private static ClassFindings OfOneWay(Practical practical, ClassReadings readings, AtomicWeights weights, AnalysisOptions asked, Arm? arm)
    {
        var ideal = new IdealRun(practical, weights, arm);
        Identifiability identifiability = IdentifiabilityOf(practical, readings, asked.Language);
        List<GroupFindings> groups = Groups(practical, readings, weights, ideal, asked, arm, out ClassDiagnosis? diagnosis);
        ClassResult result = Class(practical, readings, identifiability, groups, ideal, weights, diagnosis?.Shared ?? [], new Circumstances(practical, asked.Conditions).InArm(arm), asked);
        return new ClassFindings(practical, readings, identifiability, groups, result, asked.Language);
    }

    /// <summary>Each way by itself, odd results, causes and all; then all groups together, each judged among its own.</summary>
    private static ClassFindings OfSeveralWays(
        Practical practical, ClassReadings readings, AtomicWeights weights, AnalysisOptions asked, IReadOnlyList<ArmGroups> ways)
    {
        var texts = new ConclusionTexts(asked.Language);
        var groups = new GroupFindings[readings.Groups.Count];
        var arms = new List<ArmFindings>();
        foreach (ArmGroups way in ways)
        {
            ClassFindings part = OfOneWay(practical, way.Part(readings), weights, asked, way.Arm);
            arms.Add(new ArmFindings(way.Arm, way.Arm?.Label ?? texts.OrdinaryWay, part.Groups, part.Class));
            for (int i = 0; i < part.Groups.Count; i++)
            {
                groups[way.Places[i]] = part.Groups[i];
            }
        }

        Identifiability identifiability = IdentifiabilityOf(practical, readings, asked.Language);
        var ideal = new IdealRun(practical, weights);
        ClassResult all = Class(
            practical, readings, identifiability, groups, ideal, weights, [.. arms.SelectMany(a => a.Result.SharedCauses)], new Circumstances(practical, asked.Conditions), asked);
        return new ClassFindings(
            practical, readings, identifiability, groups, ArmWords.Told(practical, readings, all, arms, asked.Language), asked.Language) { Arms = arms };
    }

    private static ClassResult Class(
        Practical practical,
        ClassReadings readings,
        Identifiability identifiability,
        IReadOnlyList<GroupFindings> groups,
        IdealRun ideal,
        AtomicWeights weights,
        IReadOnlyList<SharedCause> shared,
        Circumstances circumstances,
        AnalysisOptions options)
    {
        EngineLanguage language = options.Language;
        ClassQuantity[] pooled =
        [
            .. practical.Quantities.Select(q => Pooling.Of(q, groups, ideal.SpreadOf(q.Id), new CommonPart(ideal.SharedIn(q.Id, circumstances)))).OfType<ClassQuantity>(),
        ];
        ChangeEvidence change = ChangeTest.Of(practical, groups, (double)readings.Balance.ResolutionInGrams, language);
        AcceptedResult accepted = AcceptedComparison.Of(practical, ideal, pooled, language);
        FormulaRanking? formula = FormulaDeduction.Of(practical, ideal, groups, weights, circumstances, language);
        IReadOnlyList<EquationChoice> equations = EquationChoice.All(
            practical, pooled.FirstOrDefault(q => q.Quantity.Id == practical.Findings.Key), weights);
        ClassCurve? curve = options.Curves ? ClassCurve.Of(practical, groups, language) : null;
        var conclusion = new Conclusion(practical, readings, identifiability, groups, pooled, language);
        return new ClassResult(
            pooled,
            ProductLine.Of(practical, ideal, groups, language),
            change,
            accepted,
            formula,
            equations,
            [.. conclusion.Sentences(change, accepted, formula, equations, ideal), .. curve?.Sentences ?? []],
            shared,
            curve);
    }

    /// <summary>By the columns of the table: a reading that some group has belongs to the table.</summary>
    private static Identifiability IdentifiabilityOf(Practical practical, ClassReadings readings, EngineLanguage language)
    {
        string[] taken = [.. readings.Groups.SelectMany(g => g.Readings).Select(r => r.Id).Distinct()];
        string[] columns = [.. readings.Groups.SelectMany(g => g.DerivedColumns).Select(r => r.Id).Distinct()];
        return Identifiability.Of(practical, taken, columns, language);
    }

    private static List<GroupFindings> Groups(
        Practical practical, ClassReadings readings, AtomicWeights weights, IdealRun ideal, AnalysisOptions options, Arm? arm, out ClassDiagnosis? diagnosis)
    {
        var estimator = new GroupEstimator(practical, readings.Balance, weights, options.Language);
        IReadOnlyList<QuantityResult>[] estimates = [.. readings.Groups.Select(estimator.Estimate)];
        var oddity = new OddityRule(practical, ideal, estimates, options.Language);
        ConstantMassRule? constantMass = practical.Findings.ConstantMass is ConstantMassDefinition rule
            ? new ConstantMassRule(rule, practical.RepeatsReaction, (double)readings.Balance.ResolutionOf(rule.Reading), ideal.ChangeOfOneGram, options.Language)
            : null;
        ConstantMass?[] same = [.. readings.Groups.Zip(estimates, JudgeConstantMass)];
        ClassDiagnosis? found = diagnosis = options.Causes
            ? new ClassDiagnosis(practical, readings, weights, options, arm, same) : null;
        var wording = new Wording(options.Language);
        CurveRule? curve = options.Curves && practical.Series is SeriesDefinition series ? new CurveRule(series, readings.Balance, options.Language) : null;
        return
        [
            .. readings.Groups.Select((group, i) => new GroupFindings(
                group, wording.Trial(group.Name, group.Trial), estimates[i], same[i], oddity.Judge(estimates[i]), [.. estimator.Contradictions(group)], found?.Groups[i], curve?.Of(group.Series))),
        ];

        ConstantMass? JudgeConstantMass(GroupReadings group, IReadOnlyList<QuantityResult> quantities) => constantMass?.Judge(
            group,
            quantities.FirstOrDefault(q => q.Quantity.Id == practical.Findings.Sample) as QuantityEstimate,
            group.Readings.Count == 0 ? 0 : estimator.UncertaintyOf(group.Readings[^1]));
    }
}
