using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>
/// Three to six points for the talk at the end of a lesson: what the data show, how strongly, whether bias or chance, what they
/// cannot show, which odd result to look into and which question leads there, and what would decide it next time. Every
/// number comes from the findings; no point gives a cause away (docs/methods/talking-points.md).
/// </summary>
public sealed class TalkingPoints
{
    private readonly ClassFindings findings;
    private readonly QuantityDefinition keyDefinition;
    private readonly ClassQuantity? key;
    private readonly TalkingTexts texts;
    private readonly Wording wording;

    private TalkingPoints(ClassFindings findings)
    {
        this.findings = findings;
        keyDefinition = findings.Practical.Quantities.First(q => q.Id == findings.Practical.Findings.Key);
        key = findings.Class.Find(keyDefinition.Id);
        (texts, wording) = (new TalkingTexts(findings.Language), new Wording(findings.Language));
    }

    /// <summary>The points of a class, in the order in which they are best talked about.</summary>
    /// <param name="findings">What the class's readings show.</param>
    public static IReadOnlyList<TalkingPoint> Of(ClassFindings findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var points = new TalkingPoints(findings);
        TalkingPoint?[] all =
        [
            new(TalkingTopic.Shown, points.Shown(), mentionsOdd: findings.Class.Sentences.Any(s => s is { Topic: ConclusionTopic.Change, MentionsOdd: true })),
            points.key is ClassQuantity found ? new(TalkingTopic.Strength, points.Strength(found)) : null,
            findings.Class.Accepted is AcceptedResult.Compared compared ? new(TalkingTopic.Bias, points.Bias(compared)) : null,
            points.Limit() is string limit ? new(TalkingTopic.Limit, limit) : null,
            OddPoint.Of(findings),
            new(TalkingTopic.NextTime, points.NextTime()),
        ];
        return [.. all.OfType<TalkingPoint>()];
    }

    private string Shown() => findings.Class.Change switch
    {
        ChangeEvidence.Direction signs => Changing().Length >= ClassVerdict.FewestForSigns ? Signs(signs)
            : Changing().Length == 1 ? texts.SecondGroup(signs.Sentence) : texts.MoreGroups(signs.Sentence),
        ChangeEvidence.Sameness { Shown: true } same => texts.SameShown(same.Sentence),
        ChangeEvidence.Sameness same => texts.SameNotShown(same.Sentence),
        _ => texts.NothingShown(findings.Class.Change.Sentence),
    };

    private string Signs(ChangeEvidence.Direction signs)
    {
        bool rises = findings.Practical.Findings.Expect == ExpectedChange.Rises;
        string seen = ChangeTest.WhichGroups(
            rises, rises ? signs.Rose : signs.Fell, Changing().Length, findings.Groups.Count, new ChangeTexts(findings.Language));
        string coins = Coins((int)Math.Round(1000 * signs.SignTestP));
        return signs.Shown ? texts.SignsShown(seen, coins) : texts.SignsNotShown(seen, coins);
    }

    private GroupFindings[] Changing() => [.. findings.Groups.Where(g => g.Find(findings.Practical.Findings.Change) is not null)];

    private string Coins(int inThousand) => inThousand switch
    {
        < 1 => texts.CoinsHardlyEver,
        >= 1000 => texts.CoinsEveryTime,
        1 => texts.CoinsOnce,
        _ => texts.CoinsTimes(inThousand.InFigures()),
    };

    private string Strength(ClassQuantity key)
    {
        string unit = key.Quantity.UnitBehind;
        string one = Figures.Text(key.Within, Figures.DecimalsFor(key.Within)) + unit;
        if (key.Count == 1)
        {
            return texts.OneGroupFound(key.Text + unit, one);
        }

        string several = Figures.Text(key.StandardUncertainty, Figures.DecimalsFor(key.StandardUncertainty)) + unit;
        string count = key.Count.InFigures();
        return key.Between <= 0 ? texts.TogetherOrAlone(one, count, several)
            : key.WithinIsFromTrials ? texts.MoreThanTrials(one, count, several) : texts.MoreThanBalances(one, count, several);
    }

    private string Bias(AcceptedResult.Compared compared)
    {
        ClassQuantity value = compared.Value;
        int decimals = Figures.DecimalsFor(value.StandardUncertainty);
        string unit = value.Quantity.UnitBehind;
        string distance = Figures.Text(Math.Abs(value.Value - compared.Accepted), decimals) + unit;
        string lies = (value.Count == 1, value.Value < compared.Accepted) switch
        {
            (true, true) => texts.GroupBelow(distance),
            (true, false) => texts.GroupAbove(distance),
            (false, true) => texts.ClassBelow(distance),
            _ => texts.ClassAbove(distance),
        };
        string half = Figures.Text((value.Interval.High - value.Interval.Low) / 2, decimals) + unit;
        return compared.IsBiased ? texts.Biased(lies) : texts.NotBiased(lies, half);
    }

    private string? Limit()
    {
        string[] fit = [.. findings.Class.Equations.Where(e => e.Fits).Select(e => e.Alternative.Label)];
        if (fit.Length > 1)
        {
            return texts.BetweenEquations(wording.And(fit));
        }

        if (key is null)
        {
            return texts.WhichWeighing(keyDefinition.Label);
        }

        if (findings.Class.Sentences.FirstOrDefault(s => s.Topic == ConclusionTopic.ConstantMass) is not ConclusionSentence heated)
        {
            return null;
        }

        bool twice = findings.Groups.Any(g => g.ConstantMass?.LastChangeInGrams is not null);
        return twice ? texts.SameTwice(heated.WithoutNames) : texts.SecondHeating(heated.WithoutNames);
    }

    private string NextTime()
    {
        if (key is null)
        {
            MissingReadings? missing = findings.Identifiability.Undetermined.FirstOrDefault(m => m.Quantity.Id == keyDefinition.Id);
            return missing is { Readings.Count: > 0 }
                ? texts.NextTimeTake(wording.AllAnd([.. missing.Readings.Select(r => wording.Quoted(r.Label))])) : texts.NextTimeLook;
        }

        if (findings.Class.Accepted is AcceptedResult.Compared { IsBiased: true })
        {
            return texts.NextTimeBiased;
        }

        return Halved(key);
    }

    /// <summary>Standard uncertainty goes with 1/√groups; the balance's part of a ratio goes with 1/sample.</summary>
    private string Halved(ClassQuantity found)
    {
        // However many groups: what they share stays.
        if (found.CommonStandardUncertainty > found.StandardUncertainty / 2)
        {
            return texts.NotHalved;
        }

        (string groups, string now) = ((4 * found.Count).InFigures(), found.Count.InFigures());
        if (found.Between > 0)
        {
            return texts.HalvedByGroups(groups, now);
        }

        AmountLimits limits = findings.Practical.Limits;
        bool mayDouble = findings.Class.Find(findings.Practical.Findings.Sample) is ClassQuantity sample
            && sample.Quantity.Unit == limits.Unit && 2 * sample.Value <= limits.LargestSample;
        return mayDouble ? texts.HalvedBySample(groups, now) : texts.HalvedByBalance(groups, now);
    }
}
