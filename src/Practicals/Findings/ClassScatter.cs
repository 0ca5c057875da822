using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>A class's median of one quantity and its scatter, by which a group far from it is odd.</summary>
internal sealed class ClassScatter
{
    private readonly double median;
    private readonly double scale;
    private readonly double limit;
    private readonly OddityTexts texts;

    /// <summary>Takes them.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="found">Its value in every group whose readings are possible.</param>
    /// <param name="quantities">In how many quantities the class is searched.</param>
    /// <param name="texts">The sentences.</param>
    public ClassScatter(QuantityDefinition quantity, QuantityEstimate[] found, int quantities, OddityTexts texts)
    {
        (Quantity, Count, this.texts) = (quantity, found.Length, texts);
        if (CanTell)
        {
            double[] values = [.. found.Select(e => e.Value)];
            median = Summary.Median(values);
            // Never less than what the balance alone scatters: groups that agree by luck make nobody odd.
            double own = Summary.Median([.. found.Select(e => e.StandardUncertainty)]);
            scale = Math.Max(Summary.MedianAbsoluteDeviation(values), own);
            limit = OddGroups.LimitOf(Count, quantities);
        }
    }

    /// <summary>The quantity.</summary>
    public QuantityDefinition Quantity { get; }

    /// <summary>Groups that have it.</summary>
    public int Count { get; }

    /// <summary>Whether there are groups enough to judge one of them.</summary>
    public bool CanTell => Count >= OddGroups.FewestForScatter;

    /// <summary>Whether a value lies beyond the limit.</summary>
    public bool IsOdd(QuantityEstimate estimate) => CanTell && Math.Abs(estimate.Value - median) > limit * scale;

    /// <summary>How far a value lies from the median, in a sentence.</summary>
    public string Say(QuantityEstimate estimate)
    {
        double score = (estimate.Value - median) / scale;
        Func<string, string, string, string, string, string, string> said = (IsOdd(estimate), score < 0) switch
        {
            (true, true) => texts.OddBelow,
            (true, false) => texts.OddAbove,
            (false, true) => texts.OrdinaryBelow,
            _ => texts.OrdinaryAbove,
        };
        return said(
            Wording.Capital(Quantity.Label),
            estimate.Text,
            Math.Abs(score).InFigures("F1"),
            Figures.Text(scale, Figures.DecimalsFor(scale)),
            Figures.Text(median, estimate.Decimals),
            limit.InFigures("0.#"));
    }
}
