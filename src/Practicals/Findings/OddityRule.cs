using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>
/// Which groups' results are to be looked into: impossible ones first, then those far from the class's median by a robust
/// rule (modified z-score; B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993), in every quantity that brings
/// readings of its own. See docs/methods/class-result.md.
/// </summary>
internal sealed class OddityRule
{
    private readonly Practical practical;
    private readonly FindingsDefinition findings;
    private readonly JudgedQuantities? judged;
    private readonly ClassScatter[] scatters = [];
    private readonly OddityTexts texts;

    /// <summary>Takes the class's centre and scatter.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="ideal">Its model.</param>
    /// <param name="groups">Every group's quantities.</param>
    /// <param name="language">The language of the reasons.</param>
    public OddityRule(Practical practical, IdealRun ideal, IReadOnlyList<IReadOnlyList<QuantityResult>> groups, EngineLanguage language)
    {
        texts = new OddityTexts(language);
        this.practical = practical;
        findings = practical.Findings;
        string? main = new[] { findings.Key, findings.Change }.FirstOrDefault(id => groups.Any(g => Estimate(g, id) is not null));
        if (main is null)
        {
            return;
        }

        IReadOnlyList<QuantityResult>[] possible = [.. groups.Where(g => Impossible(g) is null)];
        judged = new JudgedQuantities(practical, ideal, main, id => Found(id).Length >= OddGroups.FewestForScatter);
        scatters = [.. judged.All.Select(q => new ClassScatter(q, Found(q.Id), judged.All.Count, texts))];

        QuantityEstimate[] Found(string id) => [.. possible.Select(g => Estimate(g, id)).OfType<QuantityEstimate>()];
    }

    /// <summary>Judges one group.</summary>
    public Oddity Judge(IReadOnlyList<QuantityResult> group)
    {
        if (Impossible(group) is (string quantity, string impossible))
        {
            return new Oddity.Odd(impossible, [quantity], [.. practical.Quantities.Select(q => q.Id)]);
        }

        (int Place, ClassScatter Scatter, QuantityEstimate Estimate)[] odd =
        [
            .. scatters.Select((s, i) => (i, s, Estimate(group, s.Quantity.Id)!)).Where(x => x.Item3 is QuantityEstimate found && x.s.IsOdd(found)),
        ];
        if (odd.Length > 0)
        {
            return new Oddity.Odd(
                string.Join(' ', odd.Select(o => o.Scatter.Say(o.Estimate))),
                [.. odd.Select(o => o.Scatter.Quantity.Id)],
                [.. practical.Quantities.Where(q => odd.Any(o => judged!.SetsAside(o.Place, q))).Select(q => q.Id)]);
        }

        if (judged is null || Estimate(group, judged.All[0].Id) is not QuantityEstimate estimate)
        {
            return new Oddity.Unjudged(texts.NotFound((judged?.All[0] ?? practical.Quantities.First(q => q.Id == findings.Key)).Label));
        }

        return scatters[0].CanTell
            ? new Oddity.Ordinary(scatters[0].Say(estimate))
            : new Oddity.Unjudged(texts.TooFewGroups(scatters[0].Count.InFigures()));
    }

    /// <summary>Why a result cannot be what it seems, whatever the class, and in which quantity: null where it can.</summary>
    private (string Quantity, string Reason)? Impossible(IReadOnlyList<QuantityResult> group)
    {
        if (Estimate(group, findings.Sample) is QuantityEstimate sample && sample.Value < -2 * sample.StandardUncertainty)
        {
            return (findings.Sample, texts.NegativeSample(sample.Quantity.Label, $"{sample.Text} {sample.Quantity.Unit}"));
        }

        int sign = findings.Expect switch { ExpectedChange.Rises => 1, ExpectedChange.Falls => -1, _ => 0 };
        if (Estimate(group, findings.Change) is QuantityEstimate change && sign * change.Value < -2 * change.StandardUncertainty)
        {
            string value = $"{change.Text} {change.Quantity.Unit}";
            return (findings.Change, sign > 0 ? texts.FellWhereItRises(change.Quantity.Label, value) : texts.RoseWhereItFalls(change.Quantity.Label, value));
        }

        return null;
    }

    private static QuantityEstimate? Estimate(IReadOnlyList<QuantityResult> group, string id) =>
        group.FirstOrDefault(r => r.Quantity.Id == id) as QuantityEstimate;
}
