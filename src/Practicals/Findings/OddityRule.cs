using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;

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

    /// <summary>Takes the class's centre and scatter.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="groups">Every group's quantities.</param>
    public OddityRule(Practical practical, IReadOnlyList<IReadOnlyList<QuantityResult>> groups)
    {
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
            return new Oddity.Unjudged($"The {(judged ?? NotFound(group)).Label} cannot be found for this group.");
        }

        if (count < FewestGroups)
        {
            return new Oddity.Unjudged(
                $"With {count.ToString(CultureInfo.InvariantCulture)} groups the scatter of the class cannot be judged.");
        }

        double score = (estimate.Value - median) / scale;
        string numbers = string.Create(
            CultureInfo.InvariantCulture,
            $"{char.ToUpperInvariant(judged.Label[0])}{judged.Label[1..]} {estimate.Text}: {Math.Abs(score):F1} times the scatter of the class ({Figures.Text(scale, Figures.DecimalsFor(scale))}) {(score < 0 ? "below" : "above")} its median {Figures.Text(median, estimate.Decimals)}");
        return Math.Abs(score) > Limit
            ? new Oddity.Odd($"{numbers}; the limit is {Limit.ToString(CultureInfo.InvariantCulture)}.")
            : new Oddity.Ordinary($"{numbers}, within the limit of {Limit.ToString(CultureInfo.InvariantCulture)}.");
    }

    /// <summary>Why a result cannot be what it seems, whatever the class: null where it can.</summary>
    private string? Impossible(IReadOnlyList<QuantityResult> group)
    {
        if (Estimate(group, findings.Sample) is QuantityEstimate sample && sample.Value < -2 * sample.StandardUncertainty)
        {
            return $"The {sample.Quantity.Label} comes out negative, {sample.Text} {sample.Quantity.Unit}: a reading or its column is wrong.";
        }

        int sign = findings.Expect switch { ExpectedChange.Rises => 1, ExpectedChange.Falls => -1, _ => 0 };
        if (Estimate(group, findings.Change) is QuantityEstimate change && sign * change.Value < -2 * change.StandardUncertainty)
        {
            string ought = sign > 0 ? "fell where it should rise" : "rose where it should fall";
            return $"The mass {ought}: {change.Quantity.Label} {change.Text} {change.Quantity.Unit}.";
        }

        return null;
    }

    private QuantityDefinition NotFound(IReadOnlyList<QuantityResult> group) =>
        group.Select(r => r.Quantity).First(q => q.Id == findings.Key);

    private static QuantityEstimate? Estimate(IReadOnlyList<QuantityResult> group, string id) =>
        group.FirstOrDefault(r => r.Quantity.Id == id) as QuantityEstimate;
}
