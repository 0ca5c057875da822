using System.Globalization;
using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;

namespace Calx.Practicals.Findings;

/// <summary>Tests over the groups whether the mass rose, fell or stayed (docs/methods/class-result.md).</summary>
internal static class ChangeTest
{
    private const double Level = ClassVerdict.Level;

    /// <summary>Fewer groups than this cannot reach 5 % in a two-sided sign test: 2 · 2⁻⁵ = 0.0625.</summary>
    private const int FewestForSigns = ClassVerdict.FewestForSigns;

    private const int MostSignsDrawn = 20_000_000;

    /// <summary>The evidence of a class.</summary>
    public static ChangeEvidence Of(Practical practical, IReadOnlyList<GroupFindings> groups, double divisionInGrams)
    {
        QuantityEstimate[] all = [.. groups.Select(g => g.Find(practical.Findings.Change)).OfType<QuantityEstimate>()];
        QuantityEstimate[] changes =
            [.. groups.Where(g => !g.IsAnomalous).Select(g => g.Find(practical.Findings.Change)).OfType<QuantityEstimate>()];
        if (all.Length == 0)
        {
            return new ChangeEvidence.Unjudged("No group's readings give a change of mass, so nothing can be said of it.");
        }

        if (changes.Length == 0)
        {
            return new ChangeEvidence.Unjudged(
                "Every group that has a change of mass has an odd result, so nothing is said of the class until they are explained.");
        }

        if (practical.Findings.Expect == ExpectedChange.Same)
        {
            return Sameness(changes, (practical.Findings.ConstantMass?.ToleranceInDivisions ?? 2) * divisionInGrams);
        }

        return Direction(all, changes, groups.Count, practical.Findings.Expect == ExpectedChange.Rises);
    }

    /// <summary>The signs are counted over every group: one is odd because its mass went the wrong way, and to leave it out
    /// would be to choose the answer. The mean, which one lid left off would decide, is that of the others.</summary>
    private static ChangeEvidence.Direction Direction(QuantityEstimate[] all, QuantityEstimate[] kept, int groups, bool rises)
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
                rose, fell, signP, permuted, clear, FewGroups(kept.Length, all.Length > kept.Length, mean, u, clear, rises));
        }

        bool shown = right && (rises ? rose > fell : fell > rose) && signP < Level;
        return new ChangeEvidence.Direction(
            rose, fell, signP, permuted, shown, ManyGroups(all.Length, groups, rises ? rose : fell, signP, shown, rises));
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

    private static string ManyGroups(int n, int groups, int count, double signs, bool shown, bool rises)
    {
        string moved = rises ? "rose" : "fell";
        string share = WhichGroups(moved, count, n, groups);
        string chance = string.Create(CultureInfo.InvariantCulture, $"{(signs < 0.001 ? "p < 0.001" : $"p = {signs:F3}")}, sign test");
        return shown
            ? $"{share}: chance alone would not do that ({chance}), so these data show that the mass {(rises ? "rises" : "falls")}."
            : $"{share}: chance could do that ({chance}), so these data do not show that the mass {(rises ? "rises" : "falls")}.";
    }

    /// <summary>In how many groups it moved: of all, or of those that have weighed it so far.</summary>
    internal static string WhichGroups(string moved, int count, int weighed, int groups)
    {
        string of = weighed < groups
            ? string.Create(CultureInfo.InvariantCulture, $"{weighed} groups weighed so far (there are {groups})") : string.Create(CultureInfo.InvariantCulture, $"{weighed} groups");
        return count == weighed ? $"The mass {moved} in all {of}" : string.Create(CultureInfo.InvariantCulture, $"The mass {moved} in {count} of {of}");
    }

    private static string FewGroups(int n, bool setAside, double mean, double u, bool clear, bool rises)
    {
        string direction = rises ? "rose" : "fell";
        string change = $"{Figures.WithUncertainty(Math.Abs(mean), u)} g";
        string limit = n == 1
            ? "one group cannot show what others would find"
            : string.Create(CultureInfo.InvariantCulture, $"with fewer than {FewestForSigns} groups no sign test can exclude chance between groups");
        return clear
            ? $"The mass {direction} by {change}{(n == 1 ? string.Empty : " on average")}{(setAside ? ", odd results left out" : string.Empty)}, more than the balance explains; {limit}."
            : $"These data do not show that the mass {direction}: it changed by {Figures.WithUncertainty(mean, u)} g, which the balance explains; {limit}.";
    }

    private static ChangeEvidence.Sameness Sameness(QuantityEstimate[] changes, double bandInGrams)
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
        string numbers = $"{Figures.WithUncertainty(mean, u)} g on average";
        string band = $"{bandInGrams.ToString("0.####", CultureInfo.InvariantCulture)} g";
        return new ChangeEvidence.Sameness(
            bandInGrams, p, p < Level,
            p < Level
                ? $"The mass stayed the same within {band}: the change is {numbers}, and a larger one is excluded (95 %)."
                : $"These data cannot exclude a change of more than {band}: it is {numbers}.");
    }
}
