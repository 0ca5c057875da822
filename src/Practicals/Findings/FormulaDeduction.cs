using Calx.Chemistry.Amounts;
using Calx.Chemistry.Elements;
using Calx.Chemistry.Formulas;
using Calx.Measurement.Distributions;
using Calx.Measurement.Statistics;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>Which formulas of small whole numbers the class's masses allow, ranked by probability.</summary>
internal static class FormulaDeduction
{
    /// <summary>The ranking, or null where the practical asks for no formula of two parts.</summary>
    public static FormulaRanking? Of(Practical practical, IdealRun ideal, IReadOnlyList<GroupFindings> groups, AtomicWeights weights, Circumstances circumstances, EngineLanguage language)
    {
        if (practical.Findings.Formula is not FormulaSearch { Elements.Count: 2 } search)
        {
            return null;
        }

        (Formula First, Formula Second) parts = (FormulaOf(search, 0), FormulaOf(search, 1));
        (string first, string second) = (search.Elements.Values.ElementAt(0), search.Elements.Values.ElementAt(1));
        double expected = ideal.SpreadOf(second, first);
        var common = new CommonPart(ideal.SharedIn(second, first, circumstances));
        return MassRatio(groups, first, second, (expected, common)) switch
        {
            null => new FormulaRanking.Undetermined(new ConclusionTexts(language).NoGroupForFormula),
            { Value: <= 0 } => new FormulaRanking.Undetermined(new ConclusionTexts(language).NoRatioForFormula),
            UncertainValue ratio => Ranking(search, parts, ratio, weights),
        };
    }

    private static Formula FormulaOf(FormulaSearch search, int index) =>
        Formula.Parse(search.Elements.Keys.ElementAt(index)).Value;

    private static FormulaRanking Ranking(
        FormulaSearch search, (Formula First, Formula Second) parts, UncertainValue ratio, AtomicWeights weights)
    {
        // One gram of the first part, and what goes with it of the second.
        WeighedPart first = WeighedPart.Of(parts.First, weights, UncertainValue.Exact(1)).Value;
        WeighedPart second = WeighedPart.Of(parts.Second, weights, ratio).Value;
        bool isHydrate = parts.Second.ToString() == "H2O";
        return isHydrate
            ? WaterOfCrystallisation.Candidates(first, second, new HydratePrior(search.Largest))
            : EmpiricalFormula.Candidates([first, second], new FormulaPrior(search.Largest));
    }

    /// <summary>Second mass over first, pooled over the groups; a small class's wider t interval is carried over to the
    /// normal law that the ranking takes. One group alone counts with how much groups of the practical differ, as two do.</summary>
    private static UncertainValue? MassRatio(IReadOnlyList<GroupFindings> groups, string firstId, string secondId, (double ExpectedBetween, CommonPart Common) known)
    {
        var values = new List<double>();
        var uncertainties = new List<double>();
        foreach (GroupFindings group in groups.Where(g => !g.IsSetAside(firstId) && !g.IsSetAside(secondId)))
        {
            if (group.Find(firstId) is QuantityEstimate { Value: > 0 } first && group.Find(secondId) is QuantityEstimate second)
            {
                double ratio = second.Value / first.Value;
                double variance = (second.StandardUncertainty * second.StandardUncertainty)
                    + (ratio * ratio * first.StandardUncertainty * first.StandardUncertainty)
                    - (2 * ratio * SharedReadings.Covariance(first, second));
                values.Add(ratio);
                uncertainties.Add(Math.Sqrt(variance) / first.Value);
            }
        }

        if (values.Count == 0)
        {
            return null;
        }

        PooledResult pooled = RandomEffects.FromKnownUncertainties([.. values], [.. uncertainties], known.ExpectedBetween);
        (double u, double degrees) = known.Common.With(pooled.StandardUncertainty, pooled.DegreesOfFreedom);
        double widening = StudentT.Quantile(0.975, degrees) / StandardNormal.Quantile(0.975);
        return UncertainValue.Of("pooled ratio of masses", pooled.Value, widening * u);
    }
}
