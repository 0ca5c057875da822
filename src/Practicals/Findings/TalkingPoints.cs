using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;

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

    private TalkingPoints(ClassFindings findings)
    {
        this.findings = findings;
        keyDefinition = findings.Practical.Quantities.First(q => q.Id == findings.Practical.Findings.Key);
        key = findings.Class.Find(keyDefinition.Id);
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
            points.key is ClassQuantity found ? new(TalkingTopic.Strength, Strength(found)) : null,
            findings.Class.Accepted is AcceptedResult.Compared compared ? new(TalkingTopic.Bias, Bias(compared)) : null,
            points.Limit() is string limit ? new(TalkingTopic.Limit, limit) : null,
            OddPoint.Of(findings),
            new(TalkingTopic.NextTime, points.NextTime()),
        ];
        return [.. all.OfType<TalkingPoint>()];
    }

    private string Shown() => findings.Class.Change switch
    {
        ChangeEvidence.Direction signs => Changing().Length < ClassVerdict.FewestForSigns
            ? $"{signs.Sentence} What would {(Changing().Length == 1 ? "a second group" : "more groups")} have to find before you believed it?"
            : Signs(signs),
        ChangeEvidence.Sameness { Shown: true } same =>
            $"{same.Sentence} Why does it take a limit, and not only a mean near nothing, to say that a mass stays the same?",
        ChangeEvidence.Sameness same => $"{same.Sentence} Is that the same as saying that the mass changed?",
        _ => $"{findings.Class.Change.Sentence} What would the table have to hold before the class could say anything?",
    };

    private string Signs(ChangeEvidence.Direction signs)
    {
        bool rises = findings.Practical.Findings.Expect == ExpectedChange.Rises;
        string seen = ChangeTest.WhichGroups(
            rises ? "rose" : "fell", rises ? signs.Rose : signs.Fell, Changing().Length, findings.Groups.Count) + ".";
        string coins = $"If every group had tossed a coin for it, so uneven a result would come {Often(signs.SignTestP)}.";
        string question = signs.Shown
            ? "What does that say about chance, and what does it leave open about the reason?"
            : "What would the class have to see before it could leave chance out?";
        return $"{seen} {coins} {question}";
    }

    private GroupFindings[] Changing() => [.. findings.Groups.Where(g => g.Find(findings.Practical.Findings.Change) is not null)];

    private static string Often(double p)
    {
        int inThousand = (int)Math.Round(1000 * p);
        return inThousand < 1 ? "less than once in 1000 classes"
            : inThousand >= 1000 ? "every time"
            : string.Create(CultureInfo.InvariantCulture, $"about {(inThousand == 1 ? "once" : $"{inThousand} times")} in 1000 classes");
    }

    private static string Strength(ClassQuantity key)
    {
        string unit = key.Quantity.UnitBehind;
        string one = Figures.Text(key.Within, Figures.DecimalsFor(key.Within)) + unit;
        if (key.Count == 1)
        {
            return $"One group found {key.Text}{unit}; its balance alone leaves {one}. What can one group never find out about its own result?";
        }

        string several = Figures.Text(key.StandardUncertainty, Figures.DecimalsFor(key.StandardUncertainty)) + unit;
        string known = string.Create(CultureInfo.InvariantCulture, $"One group alone is uncertain by {one}, {key.Count} groups together by {several}.");
        return key.Between > 0
            ? $"{known} The groups differ by more than {(key.WithinIsFromTrials ? "their own trials do" : "their balances explain")}: what else was not the same for all of them?"
            : $"{known} Against which mistakes does it help to put groups together, and against which does it not?";
    }

    private static string Bias(AcceptedResult.Compared compared)
    {
        ClassQuantity value = compared.Value;
        int decimals = Figures.DecimalsFor(value.StandardUncertainty);
        string unit = value.Quantity.UnitBehind;
        string side = value.Value < compared.Accepted ? "below" : "above";
        string lies = $"{(value.Count == 1 ? "The group" : "The class")} lies {Figures.Text(Math.Abs(value.Value - compared.Accepted), decimals)}{unit} {side} the accepted value";
        string half = Figures.Text((value.Interval.High - value.Interval.Low) / 2, decimals) + unit;
        return compared.IsBiased
            ? $"{lies}, more than chance explains. Would more groups bring it nearer? Go through the steps: which way would each thing that can go wrong push the value?"
            : $"{lies}, which chance explains. Does that show that nothing pulled it to one side? A pull of less than about {half} would not be seen here.";
    }

    private string? Limit()
    {
        string[] fit = [.. findings.Class.Equations.Where(e => e.Fits).Select(e => e.Alternative.Label)];
        if (fit.Length > 1)
        {
            return $"The value does not decide between {string.Join(", ", fit[..^1])} and {fit[^1]}. How narrow would the class's interval have to be?";
        }

        if (key is null)
        {
            return $"The {keyDefinition.Label} cannot be found from these readings. Which weighing would you need, and what would you take from what?";
        }

        if (findings.Class.Sentences.FirstOrDefault(s => s.Topic == ConclusionTopic.ConstantMass) is not ConclusionSentence heated)
        {
            return null;
        }

        bool twice = findings.Groups.Any(g => g.ConstantMass?.LastChangeInGrams is not null);
        return twice
            ? $"{heated.WithoutNames} Does the same mass twice prove that nothing more would happen?"
            : $"{heated.WithoutNames} What could a second heating and weighing have told you, and what not?";
    }

    private string NextTime()
    {
        if (key is null)
        {
            MissingReadings? missing = findings.Identifiability.Undetermined.FirstOrDefault(m => m.Quantity.Id == keyDefinition.Id);
            string advice = missing is { Readings.Count: > 0 }
                ? $"take also {string.Join(" and ", missing.Readings.Select(r => $"'{r.Label}'"))}"
                : "look into each reading while the kit is still there";
            return $"Next time: {advice}. What would the class be able to say then that it cannot say now?";
        }

        if (findings.Class.Accepted is AcceptedResult.Compared { IsBiased: true })
        {
            return "Next time more groups would only make the class surer of the same value. Which one extra weighing, or which look, would tell apart what could have pulled it?";
        }

        return $"To halve what is uncertain next time, {Halved(key)} Which of these is worth its lesson time?";
    }

    /// <summary>Standard uncertainty goes with 1/√groups; the balance's part of a ratio goes with 1/sample.</summary>
    private string Halved(ClassQuantity found)
    {
        string groups = string.Create(CultureInfo.InvariantCulture, $"about {4 * found.Count} groups instead of {found.Count}");
        if (found.Between > 0)
        {
            return $"the class would need {groups}, or groups that work more alike: a finer balance would change little.";
        }

        AmountLimits limits = findings.Practical.Limits;
        bool mayDouble = findings.Class.Find(findings.Practical.Findings.Sample) is ClassQuantity sample
            && sample.Quantity.Unit == limits.Unit && 2 * sample.Value <= limits.LargestSample;
        return mayDouble
            ? $"the class would need {groups}, or a sample twice as large, which the limits of this practical allow, or a balance that scatters half as much."
            : $"the class would need {groups}, or a balance that scatters half as much; a sample twice as large is more than this practical allows.";
    }
}
