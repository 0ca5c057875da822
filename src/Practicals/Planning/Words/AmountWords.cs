using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Planning.Words;

/// <summary>What is to be said of a plan's amounts, a sentence each.</summary>
internal sealed class AmountWords
{
    /// <summary>A bias is worth a sentence from here on, and when it is more than the class's own scatter.</summary>
    private const double BiasThatCounts = 0.03;

    /// <summary>So many groups that see nothing move are worth saying before anything else.</summary>
    private const double OpenThatCounts = 0.1;

    /// <summary>A coarse balance is worth a sentence where leaving it out gains so much, of one group and of the class together.</summary>
    private const double SpoiltThatCounts = 0.05;

    /// <summary>A class less sure than one group by so much is worth a sentence.</summary>
    private const double LessThatCounts = 0.01;

    /// <summary>Where even the best amount leads hardly anywhere, it is not named as if it did.</summary>
    private const double WorthNaming = 0.3;

    /// <summary>Fewer groups than this are not worth a word.</summary>
    private const double LeastOpen = 0.005;

    private const double LeastAstray = 0.02;

    private readonly Plan plan;
    private readonly PlanSettings settings;
    private readonly AmountTexts texts;

    private AmountWords(Plan plan)
    {
        (this.plan, settings) = (plan, plan.Settings);
        texts = new AmountTexts(settings.Language);
    }

    /// <summary>The sentences.</summary>
    public static IEnumerable<string> Of(Plan plan) => new AmountWords(plan).Sentences();

    private IEnumerable<string> Sentences()
    {
        foreach (ConclusionDefinition conclusion in plan.Undecidable)
        {
            string quantity = conclusion.Test!.Quantity;
            string why = plan.Identifiability.Undetermined.First(m => m.Quantity.Id == quantity).Why;
            yield return texts.Undecidable(conclusion.Label, why);
        }

        AmountPoint planned = plan.Amounts.Planned;
        if (planned.Chances.Count == 0)
        {
            yield break;
        }

        yield return Verdict(planned);
        yield return Range();
        foreach (string sentence in new[] { MoreCosts(), CoarseBalance(planned), FewGroups(planned), Scatter(planned) }.OfType<string>())
        {
            yield return sentence;
        }
    }

    private string Verdict(AmountPoint planned)
    {
        // What weighs the vessel with all in it has no sample to vary.
        bool varies = settings.Practical.Amounts is not null;
        string sample = varies ? texts.GramsOf(Grams(planned.SampleInGrams))
            : plan.Undecidable.Count > 0 && planned.ClassRight >= AmountAdvice.Sure && planned.ClassWrong <= AmountAdvice.Astray ? texts.UsualAmount : texts.UsualAmountFirst;
        (bool one, string groups) = (settings.Groups == 1, settings.Groups.InFigures());
        bool sure = planned.ClassRight >= AmountAdvice.Sure && planned.ClassWrong <= AmountAdvice.Astray;
        ConclusionChance worst = planned.Chances.OrderBy(c => c.ClassRight.Value).ThenBy(c => c.GroupRight.Value).First();
        (string hardest, string odds) = (worst.Conclusion.Label, Times(planned.ClassRight));
        if (sure)
        {
            return (plan.Undecidable.Count > 0, one) switch
            {
                (true, true) => texts.EnoughForRestOne(sample, hardest, odds),
                (true, false) => texts.EnoughForRest(sample, groups, hardest, odds),
                (false, true) => texts.EnoughOne(sample, odds, hardest),
                _ => texts.Enough(sample, groups, odds, hardest),
            };
        }

        string alone = Alone(planned.Chances.FirstOrDefault(c => c.Conclusion.Test is ConclusionTest.Moves && Open(c) >= OpenThatCounts) ?? worst);
        (string right, string wrong) = (Times(worst.ClassRight.Value), Times(planned.ClassWrong));
        string together = (planned.ClassWrong > AmountAdvice.Astray, one) switch
        {
            (true, true) => texts.OneComesToOrWrong(hardest, right, wrong),
            (true, false) => texts.ComesToOrWrong(groups, hardest, right, wrong),
            (false, true) => texts.OneComesTo(hardest, right),
            _ => texts.ComesTo(groups, hardest, right),
        };
        return (planned.SampleInGrams < plan.Amounts.Smallest?.SampleInGrams, settings.Balances.Count == 1) switch
        {
            (true, true) => texts.TooLittleOneBalance(sample, alone, together),
            (true, false) => texts.TooLittle(sample, alone, together),
            (false, true) => texts.NotEnoughOneBalance(sample, alone, together),
            _ => texts.NotEnough(sample, alone, together),
        };
    }

    /// <summary>Where one kind of balance spoils what the others could show.</summary>
    private string? CoarseBalance(AmountPoint planned)
    {
        if (plan.Amounts.Changes.FirstOrDefault(c => c.Id == AmountSearch.FinestOnly) is not AmountChange only
            || only.Then.ClassRight + only.Then.GroupRight < planned.ClassRight + planned.GroupRight + SpoiltThatCounts)
        {
            return null;
        }

        double coarsest = settings.Balances.Max(b => b.ResolutionInGrams);
        int given = settings.Balances.Count(b => b.ResolutionInGrams == coarsest);
        Func<string, string, string, string, string, string, string, string, string> said = given == 1 ? texts.OneCoarse : texts.SomeCoarse;
        return said(
            given.InFigures(), settings.Balances.Count.InFigures(), coarsest.InFigures(), only.Label,
            Times(only.Then.GroupRight), Times(planned.GroupRight), Times(only.Then.ClassRight), Times(planned.ClassRight));
    }

    /// <summary>Why a few groups together may say less than one of them: the sign test asks for nearly all to agree.</summary>
    private string? FewGroups(AmountPoint planned)
    {
        ConclusionChance? less = planned.Chances.FirstOrDefault(c =>
            c.Conclusion.Test is ConclusionTest.Moves && c.ClassRight.Value < c.GroupRight.Value - LessThatCounts);
        return less is null || settings.Groups == 1 ? null : texts.FewForSigns(
            settings.Groups.InFigures(), less.Conclusion.Label, Times(less.ClassRight.Value), Times(less.GroupRight.Value));
    }

    /// <summary>What one group sees, as it would tell it.</summary>
    private string Alone(ConclusionChance chance)
    {
        if (Open(chance) < LeastOpen)
        {
            return chance.GroupWrong.Value >= LeastAstray ? texts.SaysSomethingElse(Odds.OfGroups(chance.GroupWrong.Value, settings.Language)) : texts.AloneIsSure;
        }

        string groups = Odds.OfGroups(Open(chance), settings.Language);
        string said = chance.Conclusion.Test switch
        {
            ConclusionTest.Moves { Up: true } => texts.SeesNoGain(groups),
            ConclusionTest.Moves => texts.SeesNoLoss(groups),
            _ => texts.CannotSay(groups, chance.Conclusion.Label),
        };
        return chance.GroupWrong.Value >= LeastAstray ? texts.AndSomethingElse(said, Odds.OfGroups(chance.GroupWrong.Value, settings.Language)) : said;
    }

    private static double Open(ConclusionChance chance) => 1 - chance.GroupRight.Value - chance.GroupWrong.Value;

    private string Range()
    {
        AmountAdvice amounts = plan.Amounts;
        string largest = Grams(amounts.LargestInGrams);
        if (amounts.Curve.Count == 0)
        {
            return texts.NoAmounts;
        }

        if (amounts.Smallest is not AmountPoint smallest)
        {
            return amounts.Best!.ClassRight >= WorthNaming ? texts.NoneUpToBest(largest, Grams(amounts.Best.SampleInGrams)) : texts.NoneUpTo(largest);
        }

        return amounts.Best is AmountPoint more && more.SampleInGrams > smallest.SampleInGrams
            ? texts.SureFromTo(Grams(smallest.SampleInGrams), Grams(more.SampleInGrams), largest)
            : texts.SureFrom(Grams(smallest.SampleInGrams), largest);
    }

    /// <summary>What the largest amount costs against the plan's: time, and faults that come oftener.</summary>
    private string? MoreCosts()
    {
        double largest = plan.Amounts.LargestInGrams;
        if (settings.Practical.Amounts is not AmountsDefinition amounts || settings.SampleInGrams >= largest)
        {
            return null;
        }

        double relative = largest / settings.SampleInGrams;
        var usual = new Circumstances(settings.Practical, settings.AllConditions);
        Circumstances now = usual.ForSample(settings.SampleInGrams);
        Circumstances then = usual.ForSample(largest);
        string[] costs =
        [
            .. settings.Practical.Steps.Where(s => s.Place.Grows > 0 && settings.IsInLesson(s)).Select(s =>
                texts.TakesLonger(s.Label, (100 * (Math.Pow(relative, s.Place.Grows) - 1)).InFigures("F0"))),
            .. Enumerable.Range(0, settings.Practical.Faults.Count).Where(f => amounts.Grows.ContainsKey(settings.Practical.Faults[f].Cause)).Select(f =>
                texts.HappensOftener(
                    settings.Practical.Faults[f].Label, (100 * then.RateOf(f)).InFigures("F0"), (100 * now.RateOf(f)).InFigures("F0"))),
        ];
        return costs.Length == 0 ? null : texts.MoreCosts(Grams(largest), new Wording(settings.Language).List(costs));
    }

    private string? Scatter(AmountPoint planned)
    {
        QuantityDefinition key = settings.Practical.Quantities.First(q => q.Id == settings.Practical.Findings.Key);
        if (planned.GroupSpread is not double group)
        {
            return null;
        }

        string groups = (100 * group).InFigures("F0");
        if (planned is not { ClassSpread: double all, ClassBias: double bias })
        {
            return texts.GroupsScatter(key.Label, groups);
        }

        (string classes, string off) = ((100 * all).InFigures("F1"), (100 * Math.Abs(bias)).InFigures("F0"));
        return Math.Abs(bias) <= Math.Max(BiasThatCounts, all) ? texts.ClassesScatter(key.Label, groups, classes)
            : bias < 0 ? texts.ScatterBelow(key.Label, groups, classes, off) : texts.ScatterAbove(key.Label, groups, classes, off);
    }

    private string Times(double probability) => Odds.Times(probability, settings.Language);

    private static string Grams(double grams) => grams.InFigures("0.######");
}
