using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>
/// Which groups' results are to be looked into: impossible ones first, then those far from the class's median by a robust
/// rule (modified z-score; B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993). See
/// docs/methods/class-result.md.
/// </summary>
internal sealed class OddityRule
{
    /// <summary>Iglewicz and Hoaglin's limit for the modified z-score.</summary>
    public const double Limit = OddGroups.Limit;

    /// <summary>With fewer groups than this a median and its scatter say nothing of one of them (judgement).</summary>
    public const int FewestGroups = OddGroups.FewestForScatter;

    private readonly FindingsDefinition findings;
    private readonly QuantityDefinition? judged;
    private readonly double median;
    private readonly double scale;
    private readonly int count;
    private readonly OddityTexts texts;

    /// <summary>Takes the class's centre and scatter.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="groups">Every group's quantities.</param>
    /// <param name="language">The language of the reasons.</param>
    public OddityRule(Practical practical, IReadOnlyList<IReadOnlyList<QuantityResult>> groups, EngineLanguage language)
    {
        texts = new OddityTexts(language);
        findings = practical.Findings;
        judged = new[] { findings.Key, findings.Change }
            .Select(id => practical.Quantities.First(q => q.Id == id))
            .FirstOrDefault(q => groups.Any(g => Estimate(g, q.Id) is not null));
        QuantityEstimate[] possible = judged is null
            ? []
            : [.. groups.Where(g => Impossible(g) is null).Select(g => Estimate(g, judged.Id)).OfType<QuantityEstimate>()];
        count = possible.Length;
        if (count >= FewestGroups)
        {
            double[] values = [.. possible.Select(e => e.Value)];
            median = Summary.Median(values);
            // Never less than what the balance alone scatters: groups that agree by luck make nobody odd.
            double own = Summary.Median([.. possible.Select(e => e.StandardUncertainty)]);
            scale = Math.Max(Summary.MedianAbsoluteDeviation(values), own);
        }
    }

    /// <summary>Judges one group.</summary>
    public Oddity Judge(IReadOnlyList<QuantityResult> group)
    {
        if (Impossible(group) is string impossible)
        {
            return new Oddity.Odd(impossible);
        }

        if (judged is null || Estimate(group, judged.Id) is not QuantityEstimate estimate)
        {
            return new Oddity.Unjudged(texts.NotFound((judged ?? NotFound(group)).Label));
        }

        if (count < FewestGroups)
        {
            return new Oddity.Unjudged(texts.TooFewGroups(count.InFigures()));
        }

        double score = (estimate.Value - median) / scale;
        Func<string, string, string, string, string, string, string> said = (Math.Abs(score) > Limit, score < 0) switch
        {
            (true, true) => texts.OddBelow,
            (true, false) => texts.OddAbove,
            (false, true) => texts.OrdinaryBelow,
            _ => texts.OrdinaryAbove,
        };
        string sentence = said(
            Wording.Capital(judged.Label),
            estimate.Text,
            Math.Abs(score).InFigures("F1"),
            Figures.Text(scale, Figures.DecimalsFor(scale)),
            Figures.Text(median, estimate.Decimals),
            Limit.InFigures());
        return Math.Abs(score) > Limit ? new Oddity.Odd(sentence) : new Oddity.Ordinary(sentence);
    }

    /// <summary>Why a result cannot be what it seems, whatever the class: null where it can.</summary>
    private string? Impossible(IReadOnlyList<QuantityResult> group)
    {
        if (Estimate(group, findings.Sample) is QuantityEstimate sample && sample.Value < -2 * sample.StandardUncertainty)
        {
            return texts.NegativeSample(sample.Quantity.Label, $"{sample.Text} {sample.Quantity.Unit}");
        }

        int sign = findings.Expect switch { ExpectedChange.Rises => 1, ExpectedChange.Falls => -1, _ => 0 };
        if (Estimate(group, findings.Change) is QuantityEstimate change && sign * change.Value < -2 * change.StandardUncertainty)
        {
            string value = $"{change.Text} {change.Quantity.Unit}";
            return sign > 0 ? texts.FellWhereItRises(change.Quantity.Label, value) : texts.RoseWhereItFalls(change.Quantity.Label, value);
        }

        return null;
    }

    private QuantityDefinition NotFound(IReadOnlyList<QuantityResult> group) =>
        group.Select(r => r.Quantity).First(q => q.Id == findings.Key);

    private static QuantityEstimate? Estimate(IReadOnlyList<QuantityResult> group, string id) =>
        group.FirstOrDefault(r => r.Quantity.Id == id) as QuantityEstimate;
}
