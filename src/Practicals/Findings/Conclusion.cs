using Calx.Chemistry.Amounts;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>
/// The class's conclusion in three to six plain sentences: what the data show, how strongly, and what they cannot show.
/// </summary>
internal sealed class Conclusion
{
    private const int MostCausesNamed = 4;
    private const int MostGroupsNamed = 12;

    /// <summary>Odd results that make a mean so many times as uncertain have ruined it (judgement).</summary>
    private const double MeanIsRuined = 5;

    private readonly Practical practical;
    private readonly ClassReadings readings;
    private readonly Identifiability identifiability;
    private readonly IReadOnlyList<GroupFindings> groups;
    private readonly IReadOnlyList<ClassQuantity> pooled;
    private readonly EngineLanguage language;
    private readonly ConclusionTexts texts;
    private readonly Wording wording;

    public Conclusion(
        Practical practical,
        ClassReadings readings,
        Identifiability identifiability,
        IReadOnlyList<GroupFindings> groups,
        IReadOnlyList<ClassQuantity> pooled,
        EngineLanguage language)
    {
        this.practical = practical;
        this.readings = readings;
        this.identifiability = identifiability;
        this.groups = groups;
        this.pooled = pooled;
        this.language = language;
        (texts, wording) = (new ConclusionTexts(language), new Wording(language));
    }

    private ClassQuantity? Key => pooled.FirstOrDefault(q => q.Quantity.Id == practical.Findings.Key);

    /// <summary>The sentences, in the order in which a teacher would say them.</summary>
    public IReadOnlyList<ConclusionSentence> Sentences(
        ChangeEvidence change, AcceptedResult accepted, FormulaRanking? formula, IReadOnlyList<EquationChoice> equations, IdealRun ideal)
    {
        GroupFindings[] odd = [.. groups.Where(g => g.IsAnomalous)];
        var sentences = new List<ConclusionSentence>
        {
            new(ConclusionTopic.Change, change.Sentence, mentionsOdd: odd.Length > 0 && LeavesOddOut(change)),
            Key is ClassQuantity key
                ? new(ConclusionTopic.Value, Value(key))
                : new(ConclusionTopic.Value, NoValue(), mentionsOdd: odd.Length > 0),
        };
        if (accepted is AcceptedResult.Compared compared)
        {
            sentences.Add(new(ConclusionTopic.Accepted, Against(compared)));
        }

        if (equations.Count > 0)
        {
            sentences.Add(new(ConclusionTopic.Equations, Between(equations)));
        }
        else if (formula is FormulaRanking.Ranked ranked)
        {
            sentences.Add(new(ConclusionTopic.Formula, texts.Formula(FormulaWords.Of(ranked, language).TrimEnd('.'))));
        }
        else
        {
            sentences.AddRange(NumberChoice.Sentences(practical, pooled, ideal, language).Select(s => new ConclusionSentence(ConclusionTopic.Choice, s)));
        }

        if (readings.IsSimulated)
        {
            sentences.Insert(0, new(ConclusionTopic.Simulated, texts.Simulated));
        }

        sentences.AddRange(UncountedWords.Sentences(readings.Uncounted, language));
        if (odd.Length > 0)
        {
            sentences.Add(new(ConclusionTopic.OddResults, Odd(odd, named: true), Odd(odd, named: false), mentionsOdd: true));
        }

        if (practical.Findings.ConstantMass is not null)
        {
            sentences.Add(new(ConclusionTopic.ConstantMass, Completeness(named: true), Completeness(named: false)));
        }

        return sentences;
    }

    /// <summary>Whether the sentence about the change says that odd results are left out: those of few groups do.</summary>
    private bool LeavesOddOut(ChangeEvidence change) => change is ChangeEvidence.Unjudged
        || groups.Count(g => g.Find(practical.Findings.Change) is not null) < ClassVerdict.FewestForSigns;

    private string Value(ClassQuantity key)
    {
        int decimals = Figures.DecimalsFor(key.StandardUncertainty);
        string unit = key.Quantity.UnitBehind;
        bool weighed = practical.Readings.All(r => r.IsWeighing || !key.Quantity.Formula.Names.Contains(r.Id));
        string value = Figures.Text(key.Value, decimals) + unit;
        string shared = key.Common.From.Count == 0 ? "" : " " + texts.CommonToAll(
            Figures.Text(key.CommonStandardUncertainty, Figures.DecimalsFor(key.CommonStandardUncertainty)) + unit,
            wording.LongOr([.. key.Common.From.Select(f => f.Parameter.Label)]));
        (string low, string high) = (Figures.Text(key.Interval.Low, decimals), Figures.Text(key.Interval.High, decimals));
        if (key.Count == 1)
        {
            string alone = Figures.Text(key.Within, decimals) + unit;
            return (weighed ? texts.OneGroupGives(value, key.Quantity.Label, low, high, alone) : texts.OneGroupGivesRead(value, key.Quantity.Label, low, high, alone)) + shared;
        }

        string within = Figures.Text(key.Within, Figures.DecimalsFor(key.Within)) + unit;
        string between = key.Between > 0
            ? texts.Further(Figures.Text(key.Between, Math.Max(decimals, Figures.DecimalsFor(key.Between))) + unit) : texts.NoFurther;
        return texts.GroupsGive(
            wording.CountFirst(key.Count), value, key.Quantity.Label, low, high,
            key.WithinIsFromTrials ? texts.WithinTrials(within) : weighed ? texts.WithinBalance(within) : texts.WithinInstruments(within), between) + shared;
    }

    private string NoValue()
    {
        MissingReadings? missing = identifiability.Undetermined.FirstOrDefault(m => m.Quantity.Id == practical.Findings.Key);
        if (missing is null)
        {
            QuantityDefinition key = practical.Quantities.First(q => q.Id == practical.Findings.Key);
            return groups.Any(g => g.IsSetAside(key.Id) && g.Find(key.Id) is not null)
                ? texts.NoneWithoutOdd(key.Label)
                : texts.NoneGives(key.Label);
        }

        string why = practical.Findings.Formula is null ? missing.Why : texts.NoFormula(missing.Why.TrimEnd('.'));
        return practical.Findings.EmptyAdvice is string advice ? $"{why} {advice}" : why;
    }

    private string Against(AcceptedResult.Compared compared)
    {
        ClassQuantity value = compared.Value;
        int decimals = Figures.DecimalsFor(value.StandardUncertainty);
        string unit = value.Quantity.UnitBehind;
        string accepted = Figures.Text(compared.Accepted, IsWhole(compared.Accepted) ? 0 : Math.Max(decimals, 2)) + unit;
        string distance = Figures.Text(Math.Abs(value.Value - compared.Accepted), decimals) + unit;
        bool below = value.Value < compared.Accepted;
        if (!compared.IsBiased)
        {
            string half = Figures.Text((value.Interval.High - value.Interval.Low) / 2, decimals) + unit;
            return below
                ? texts.BelowByChance(accepted, distance, Chance(compared.P), half) : texts.AboveByChance(accepted, distance, Chance(compared.P), half);
        }

        string pull = compared.CausesThatPull.Count == 0 ? texts.NothingPulls
            : texts.Pulls(wording.LongOr([.. compared.CausesThatPull.Take(MostCausesNamed).Select(c => c.Label)]));
        return below
            ? texts.BelowByMore(accepted, distance, Chance(compared.P), pull) : texts.AboveByMore(accepted, distance, Chance(compared.P), pull);
    }

    private string Between(IReadOnlyList<EquationChoice> equations)
    {
        string[] fit = [.. equations.Where(e => e.Fits).Select(Named)];
        string[] not = [.. equations.Where(e => !e.Fits).Select(Named)];
        return (fit.Length, not.Length) switch
        {
            (0, _) => texts.FitsNone(wording.Nor(not)),
            (1, 0) => texts.FitsTheOne(fit[0]),
            (1, _) => texts.FitsOneNot(fit[0], wording.Or(not)),
            (_, 0) => texts.FitsAll(wording.And(fit)),
            _ => texts.ExcludesSome(wording.And(not), wording.And(fit)),
        };

        string Named(EquationChoice choice) => texts.EquationWithValue(choice.Alternative.Label, Figures.Text(choice.Expected, 3));
    }

    /// <summary>Groups that are left out of the key quantity, and then those that are odd in another alone.</summary>
    private string Odd(GroupFindings[] odd, bool named)
    {
        var sentences = new List<string>();
        GroupFindings[] inKey = [.. odd.Where(g => g.IsSetAside(practical.Findings.Key))];
        if (inKey.Length > 0)
        {
            sentences.Add(OddInKey(inKey, named));
        }

        foreach (var same in odd.Except(inKey).GroupBy(g => ((Oddity.Odd)g.Oddity).Quantities[0], StringComparer.Ordinal))
        {
            string label = practical.Quantities.First(q => q.Id == same.Key).Label;
            GroupFindings[] groupsThere = [.. same];
            string listed = Listed(groupsThere);
            string count = wording.CountFirst(groupsThere.Length);
            sentences.Add((groupsThere.Length == 1, named) switch
            {
                (true, true) => texts.OneOddElsewhereNamed(label, listed),
                (true, false) => texts.OneOddElsewhere(label),
                (false, true) => texts.SomeOddElsewhereNamed(count, label, listed),
                _ => texts.SomeOddElsewhere(count, label),
            });
        }

        return string.Join(' ', sentences);
    }

    private string Listed(GroupFindings[] odd)
    {
        string names = wording.List([.. odd.Take(MostGroupsNamed).Select(g => wording.Group(g.Name))]);
        return odd.Length > MostGroupsNamed ? texts.NamesAndMore(names, wording.Count(odd.Length - MostGroupsNamed)) : names;
    }

    private string OddInKey(GroupFindings[] odd, bool named)
    {
        string listed = Listed(odd);
        string count = wording.CountFirst(odd.Length);
        string lead = (odd.Length == 1, named) switch
        {
            (true, true) => texts.OneOddNamed(listed),
            (true, false) => texts.OneOdd,
            (false, true) => texts.SomeOddNamed(count, listed),
            _ => texts.SomeOdd(count),
        };
        return Key is { WithAllGroups: PooledValue all } key ? $"{lead} {WithOdd(key, all, odd.Length == 1)}" : lead;
    }

    /// <summary>The class with its odd results. A mean that they have ruined is no value of the class, and is not given as one.</summary>
    private string WithOdd(ClassQuantity key, PooledValue all, bool isOne)
    {
        string unit = key.Quantity.UnitBehind;
        string median = Figures.Text(key.Median, Figures.DecimalsFor(key.StandardUncertainty)) + unit;
        string mean = Figures.WithUncertainty(all.Value, all.StandardUncertainty) + unit;
        bool isRuined = all.StandardUncertainty > MeanIsRuined * key.StandardUncertainty;
        return (isRuined, isOne) switch
        {
            (true, true) => texts.WithItRuined(median, mean),
            (true, false) => texts.WithThemRuined(median, mean),
            (false, true) => texts.WithIt(median, mean),
            _ => texts.WithThem(median, mean),
        };
    }

    private string Completeness(bool named)
    {
        GroupFindings[] judged = [.. groups.Where(g => g.ConstantMass?.LastChangeInGrams is not null)];
        if (judged.Length == 0)
        {
            return texts.NobodyWeighedTwice;
        }

        GroupFindings[] not = [.. judged.Where(g => g.ConstantMass!.Verdict != ConstantMassVerdict.Same)];
        string count = wording.Count(judged.Length);
        if (not.Length == judged.Length)
        {
            return judged.Length switch
            {
                1 => texts.TheOneDidNot(judged[0].ConstantMass!.Words),
                2 => texts.NeitherDid,
                _ => texts.NoneDid(count),
            };
        }

        string open = StillOpen(judged);
        if (not.Length == 0)
        {
            return judged.Length switch
            {
                1 => texts.TheOneDid(open),
                2 => texts.BothDid(open),
                _ => texts.AllDid(count, open),
            };
        }

        string reached = wording.CountFirst(judged.Length - not.Length);
        return named && not.Length <= MostGroupsNamed
            ? texts.SomeDidNamed(reached, count, wording.List([.. not.Select(g => wording.Group(g.Name))]), open)
            : texts.SomeDid(reached, count, open);
    }

    /// <summary>What constant mass leaves open, for groups whose result is not odd: the bound takes the readings at their word.</summary>
    private string StillOpen(GroupFindings[] judged)
    {
        if (practical.Findings.ConstantMass?.LeastConversion is null)
        {
            return texts.OpenDry;
        }

        double[] bounds =
        [
            .. judged.Where(g => !g.IsAnomalous && g.ConstantMass!.Verdict == ConstantMassVerdict.Same)
                .Select(g => g.ConstantMass!.UnreactedAtMost).OfType<double>(),
        ];
        if (bounds.Length == 0)
        {
            return texts.OpenUnknown;
        }

        string least = Inference.ConstantMass.Percent(bounds.Min());
        string most = Inference.ConstantMass.Percent(bounds.Max());
        return (practical.RepeatsReaction, least == most) switch
        {
            (true, true) => texts.UnreactedUpTo(most),
            (true, false) => texts.UnreactedBetween(least, most),
            (false, true) => texts.UndriedUpTo(most),
            _ => texts.UndriedBetween(least, most),
        };
    }

    private static string Chance(double p) =>
        p < 0.001 ? "p < 0.001" : $"p = {p.InFigures("F3")}";

    private static bool IsWhole(double value) => Math.Abs(value - Math.Round(value)) < 1e-9;
}
