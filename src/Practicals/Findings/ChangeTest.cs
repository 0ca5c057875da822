using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>Tests over the groups whether the mass rose, fell or stayed (docs/methods/class-result.md).</summary>
internal static class ChangeTest
{
    private const double Level = ClassVerdict.Level;

    /// <summary>Fewer groups than this cannot reach 5 % in a two-sided sign test: 2 · 2⁻⁵ = 0.0625.</summary>
    private const int FewestForSigns = ClassVerdict.FewestForSigns;

    private const int MostSignsDrawn = 20_000_000;

    /// <summary>The evidence of a class.</summary>
    public static ChangeEvidence Of(Practical practical, IReadOnlyList<GroupFindings> groups, double divisionInGrams, EngineLanguage language)
    {
        var texts = new ChangeTexts(language);
        QuantityEstimate[] all = [.. groups.Select(g => g.Find(practical.Findings.Change)).OfType<QuantityEstimate>()];
        QuantityEstimate[] changes =
            [.. groups.Where(g => !g.IsSetAside(practical.Findings.Change)).Select(g => g.Find(practical.Findings.Change)).OfType<QuantityEstimate>()];
        if (all.Length == 0)
        {
            return new ChangeEvidence.Unjudged(texts.NoChange);
        }

        if (changes.Length == 0)
        {
            return new ChangeEvidence.Unjudged(texts.AllOdd);
        }

        if (practical.Findings.Expect == ExpectedChange.Same)
        {
            double ofBalance = (practical.Findings.ConstantMass?.ToleranceInDivisions ?? 2) * divisionInGrams;
            return Sameness(changes, ofBalance, Math.Max(ofBalance, Within(practical)), texts);
        }

        return Direction(all, changes, groups.Count, practical.Findings.Expect == ExpectedChange.Rises, texts);
    }

    /// <summary>The least band that the practical's own conclusion sets, in g; 0 where it sets none.</summary>
    private static double Within(Practical practical) => practical.Conclusions.Select(c => c.Test).OfType<ConclusionTest.Stays>()
        .Where(s => s.Quantity == practical.Findings.Change).Select(s => s.WithinInGrams).DefaultIfEmpty(0).Max();

    /// <summary>The signs are counted over every group: one is odd because its mass went the wrong way, and to leave it out
    /// would be to choose the answer. The mean, which one lid left off would decide, is that of the others.</summary>
    private static ChangeEvidence.Direction Direction(QuantityEstimate[] all, QuantityEstimate[] kept, int groups, bool rises, ChangeTexts texts)
    {
        // Readings are decimals, so their differences are: exact ties stay ties.
        decimal[] signs = [.. all.Select(Exact)];
        decimal[] exact = [.. kept.Select(Exact)];
        int rose = signs.Count(v => v > 0);
        int fell = signs.Count(v => v < 0);
        double signP = SignTest.Of([.. signs.Select(v => (double)v)]) is SignTestResult.Tested tested ? tested.Test.TwoSidedProbability : 1;
        double permuted = Permuted(exact);
        double mean = Summary.Mean([.. exact.Select(v => (double)v)]);
        bool right = rises ? mean > 0 : mean < 0;
        if (all.Length < FewestForSigns)
        {
            double u = Math.Sqrt(kept.Sum(c => c.StandardUncertainty * c.StandardUncertainty)) / kept.Length;
            bool clear = right && 2 * StandardNormal.UpperTail(Math.Abs(mean / u)) < Level;
            return new ChangeEvidence.Direction(
                rose, fell, signP, permuted, clear, FewGroups(kept.Length, all.Length > kept.Length, (mean, u), clear, rises, texts));
        }

        bool shown = right && (rises ? rose > fell : fell > rose) && signP < Level;
        return new ChangeEvidence.Direction(
            rose, fell, signP, permuted, shown, ManyGroups(WhichGroups(rises, rises ? rose : fell, all.Length, groups, texts), signP, shown, rises, texts));
    }

    private static decimal Exact(QuantityEstimate change) => (decimal)Math.Round(change.Value, change.Decimals);

    /// <summary>Exact for a class; drawn, with a fixed seed and a bounded effort, for thousands of groups.</summary>
    private static double Permuted(decimal[] changes)
    {
        int draws = Math.Clamp(MostSignsDrawn / changes.Length, 2_000, SignFlipTest.UsualDraws);
        return SignFlipTest.Of(changes, seed: 1, draws) switch
        {
            PermutationResult.Exact exact => exact.Tails.TwoSided,
            PermutationResult.Sampled sampled => sampled.Tails.TwoSided,
            _ => 1, // Every change is zero: nothing speaks for a direction.
        };
    }

    private static string ManyGroups(string which, double signs, bool shown, bool rises, ChangeTexts texts)
    {
        string chance = signs < 0.001 ? "p < 0.001" : $"p = {signs.InFigures("F3")}";
        return (shown, rises) switch
        {
            (true, true) => texts.ShownToRise(which, chance),
            (true, false) => texts.ShownToFall(which, chance),
            (false, true) => texts.NotShownToRise(which, chance),
            _ => texts.NotShownToFall(which, chance),
        };
    }

    /// <summary>In how many groups it moved: of all, or of those that have weighed it so far.</summary>
    internal static string WhichGroups(bool rises, int count, int weighed, int groups, ChangeTexts texts)
    {
        string of = weighed.InFigures();
        return (rises, count == weighed, weighed < groups) switch
        {
            (true, true, false) => texts.RoseInAll(of),
            (true, true, true) => texts.RoseInAllSoFar(of, groups.InFigures()),
            (true, false, false) => texts.RoseInSome(count.InFigures(), of),
            (true, false, true) => texts.RoseInSomeSoFar(count.InFigures(), of, groups.InFigures()),
            (false, true, false) => texts.FellInAll(of),
            (false, true, true) => texts.FellInAllSoFar(of, groups.InFigures()),
            (false, false, false) => texts.FellInSome(count.InFigures(), of),
            (false, false, true) => texts.FellInSomeSoFar(count.InFigures(), of, groups.InFigures()),
        };
    }

    private static string FewGroups(int n, bool setAside, (double Mean, double U) change, bool clear, bool rises, ChangeTexts texts)
    {
        string by = Figures.WithUncertainty(clear ? Math.Abs(change.Mean) : change.Mean, change.U);
        string fewest = FewestForSigns.InFigures();
        return (clear, n == 1, setAside, rises) switch
        {
            (true, true, false, true) => texts.OneRose(by),
            (true, true, false, false) => texts.OneFell(by),
            (true, true, true, true) => texts.OneRoseOddLeftOut(by),
            (true, true, true, false) => texts.OneFellOddLeftOut(by),
            (true, false, false, true) => texts.FewRose(by, fewest),
            (true, false, false, false) => texts.FewFell(by, fewest),
            (true, false, true, true) => texts.FewRoseOddLeftOut(by, fewest),
            (true, false, true, false) => texts.FewFellOddLeftOut(by, fewest),
            (false, true, _, true) => texts.OneNotShownToRise(by),
            (false, true, _, false) => texts.OneNotShownToFall(by),
            (false, false, _, true) => texts.FewNotShownToRise(by, fewest),
            (false, false, _, false) => texts.FewNotShownToFall(by, fewest),
        };
    }

    private static ChangeEvidence.Sameness Sameness(QuantityEstimate[] changes, double ofBalance, double bandInGrams, ChangeTexts texts)
    {
        double[] values = [.. changes.Select(c => c.Value)];
        double u = Math.Sqrt(changes.Sum(c => c.StandardUncertainty * c.StandardUncertainty)) / changes.Length;
        double mean = Summary.Mean(values);
        // With few groups their own scatter says little: what the balance leaves open is known better.
        EquivalenceResult result = values.Length < FewestForSigns
            ? Equivalence.OfEstimate(mean, u, double.PositiveInfinity, (-bandInGrams, bandInGrams))
            : Equivalence.OfMean(values, -bandInGrams, bandInGrams);
        double p = result switch
        {
            EquivalenceResult.WithinBounds within => within.Evidence.Probability,
            EquivalenceResult.BeyondBounds beyond => beyond.Evidence.Probability,
            EquivalenceResult.CannotTell open => open.Evidence.Probability,
            _ => 1,
        };
        string numbers = Figures.WithUncertainty(mean, u);
        string band = bandInGrams.InFigures("0.####");
        return new ChangeEvidence.Sameness(
            bandInGrams, p, p < Level,
            (p < Level, bandInGrams > ofBalance) switch
            {
                (true, false) => texts.StayedTheSame(band, numbers),
                (true, true) => texts.StayedTheSameAsSet(band, numbers),
                (false, false) => texts.NotShownToStay(band, numbers),
                _ => texts.NotShownToStayAsSet(band, numbers),
            });
    }
}
