using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Whether one cause befell most groups at once, a level above the single groups: in an ordinary class each fault strikes at
/// its rate; in a class that shares one, that fault strikes at a high rate of its own. At most one is shared at a time
/// (docs/methods/causes.md).
/// </summary>
internal static class SharedCauseSearch
{
    /// <summary>With fewer groups nothing can be called shared.</summary>
    public const int FewestGroups = 4;

    /// <summary>Prior probability that a class shares some fault (judgement).</summary>
    private const double PriorShared = 0.10;

    /// <summary>Rate of a shared fault: Beta(8, 1.5), about 84 groups in 100 (judgement).</summary>
    private const double RateA = 8;
    private const double RateB = 1.5;
    private const double LeastTold = 0.5;
    private const int Steps = 40;

    /// <summary>Searches the class, and the groups of each balance for a shifted zero.</summary>
    /// <param name="hidden">The points of the practical.</param>
    /// <param name="groups">For each group the probability that each fault is at work, by itself.</param>
    /// <param name="balances">The balance that each group used, or null.</param>
    /// <param name="language">The language of the sentences.</param>
    public static IReadOnlyList<SharedCause> Of(
        HiddenGroups hidden, IReadOnlyList<double[]> groups, IReadOnlyList<string?> balances, EngineLanguage language)
    {
        var found = new List<SharedCause>(Search(hidden, groups, null, f => true, language));
        string[] named = [.. balances.OfType<string>().Distinct(StringComparer.Ordinal)];
        foreach (string balance in named.Length > 1 ? named : [])
        {
            double[][] own = [.. groups.Where((_, i) => balances[i] == balance)];
            found.AddRange(Search(hidden, own, balance, f => f.Effect is FaultEffect.Zero, language));
        }

        return [.. found.OrderByDescending(s => s.Probability)];
    }

    /// <summary>How probable a fault is in one group of a class that shares it, against its usual prior: the factor on the
    /// odds.</summary>
    public static double OddsFactor(HiddenGroups hidden, int fault)
    {
        double usual = Prior(hidden, fault);
        double shared = RateA / (RateA + RateB);
        return shared / (1 - shared) / (usual / (1 - usual));
    }

    private static IEnumerable<SharedCause> Search(
        HiddenGroups hidden, IReadOnlyList<double[]> groups, string? balance, Func<FaultDefinition, bool> asked, EngineLanguage language)
    {
        Practical practical = hidden.Circumstances.Practical;
        if (groups.Count < FewestGroups)
        {
            yield break;
        }

        int[] faults = [.. Enumerable.Range(0, practical.Faults.Count).Where(f => asked(practical.Faults[f]))];
        double[] logs = [.. faults.Select(f => LogShared(hidden, groups, f))];
        double ordinary = Math.Log((1 - PriorShared) / PriorShared * faults.Length);
        double top = Math.Max(ordinary, logs.Max());
        double sum = Math.Exp(ordinary - top) + logs.Sum(l => Math.Exp(l - top));
        for (int i = 0; i < faults.Length; i++)
        {
            double probability = Math.Exp(logs[i] - top) / sum;
            if (probability >= LeastTold)
            {
                FaultDefinition fault = practical.Faults[faults[i]];
                int befallen = groups.Count(g => InSharing(hidden, g[faults[i]], faults[i]) >= 0.5);
                yield return new SharedCause(fault.Cause, fault.Label, Math.Min(1, probability), balance, groups.Count, Sentence(fault, probability, balance, (befallen, groups.Count), new CauseTexts(language)));
            }
        }
    }

    private static double InSharing(HiddenGroups hidden, double share, int fault)
    {
        double odds = share / (1 - share) * OddsFactor(hidden, fault);
        return odds / (1 + odds);
    }

    /// <summary>Logarithm of the class's evidence with this fault shared, over that of an ordinary class: the rate integrated
    /// out.</summary>
    private static double LogShared(HiddenGroups hidden, IReadOnlyList<double[]> groups, int fault)
    {
        double prior = Prior(hidden, fault);
        double[] logs = new double[Steps];
        double norm = 0;
        for (int s = 0; s < Steps; s++)
        {
            double rate = (s + 0.5) / Steps;
            double density = Math.Pow(rate, RateA - 1) * Math.Pow(1 - rate, RateB - 1);
            norm += density;
            logs[s] = Math.Log(density) + groups.Sum(g => Math.Log(
                ((1 - rate) * (1 - g[fault]) / (1 - prior)) + (rate * g[fault] / prior)));
        }

        double top = logs.Max();
        return top + Math.Log(logs.Sum(l => Math.Exp(l - top)) / norm);
    }

    private static double Prior(HiddenGroups hidden, int fault) =>
        Math.Clamp(hidden.Prior.Sets.Where(s => s.Set.Has(fault)).Sum(s => s.Probability), 1e-6, 1 - 1e-6);

    private static string Sentence(FaultDefinition fault, double probability, string? balance, (int Befallen, int Groups) count, CauseTexts texts)
    {
        (string befallen, string groups) = (count.Befallen.InFigures(), count.Groups.InFigures());
        string shared = (balance, probability) switch
        {
            (null, >= 0.95) => texts.ClassAlmostCertainly(befallen, groups, fault.Label),
            (null, >= 0.8) => texts.ClassProbably(befallen, groups, fault.Label),
            (null, _) => texts.ClassMoreLikely(befallen, groups, fault.Label),
            (_, >= 0.95) => texts.BalanceAlmostCertainly(balance, befallen, groups, fault.Label),
            (_, >= 0.8) => texts.BalanceProbably(balance, befallen, groups, fault.Label),
            _ => texts.BalanceMoreLikely(balance, befallen, groups, fault.Label),
        };
        return fault.Caution is string advice ? $"{shared} {texts.ForNextTime(advice)}" : shared;
    }
}
