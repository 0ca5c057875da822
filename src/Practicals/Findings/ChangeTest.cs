using System.Globalization;
using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;

namespace Calx.Practicals.Findings;

/// <summary>Tests over the groups whether the mass rose, fell or stayed (docs/methods/class-result.md).</summary>
internal static class ChangeTest
{
    private const double Level = 0.05;

    /// <summary>Fewer groups than this cannot reach 5 % in a two-sided sign test: 2 · 2⁻⁵ = 0.0625.</summary>
    private const int FewestForSigns = 6;

    /// <summary>The evidence of a class.</summary>
    public static ChangeEvidence Of(Practical practical, IReadOnlyList<GroupFindings> groups, double divisionInGrams)
    {
        QuantityEstimate[] changes =
            [.. groups.Where(g => !g.IsAnomalous).Select(g => g.Find(practical.Findings.Change)).OfType<QuantityEstimate>()];
        if (changes.Length == 0)
        {
            return new ChangeEvidence.Unjudged("No group's readings give a change of mass, so nothing can be said of it.");
        }

        return practical.Findings.Expect == ExpectedChange.Same
            ? Sameness(changes, (practical.Findings.ConstantMass?.ToleranceInDivisions ?? 2) * divisionInGrams)
            : Direction(changes, practical.Findings.Expect == ExpectedChange.Rises);
    }

    private static ChangeEvidence.Direction Direction(QuantityEstimate[] changes, bool rises)
    {
        double[] values = [.. changes.Select(c => c.Value)];
        // Readings are decimals: half a division separates a change from none.
        int rose = values.Count(v => v > 1e-9);
        int fell = values.Count(v => v < -1e-9);
        double signs = ExactTests.Sign(rose, fell);
        double mean = Summary.Mean(values);
        double permuted = ExactTests.SignFlip(values);
        bool right = rises ? mean > 0 : mean < 0;
        if (changes.Length < FewestForSigns)
        {
            double u = Math.Sqrt(changes.Sum(c => c.StandardUncertainty * c.StandardUncertainty)) / changes.Length;
            double z = mean / u;
            bool clear = right && 2 * StandardNormal.UpperTail(Math.Abs(z)) < Level;
            return new ChangeEvidence.Direction(rose, fell, signs, permuted, clear, FewGroups(changes.Length, mean, u, z, clear, rises));
        }

        bool shown = right && signs < Level && permuted < Level;
        return new ChangeEvidence.Direction(rose, fell, signs, permuted, shown, ManyGroups(values.Length, rose, fell, signs, shown, rises));
    }

    private static string ManyGroups(int n, int rose, int fell, double signs, bool shown, bool rises)
    {
        (string moved, int count) = rises ? ("rose", rose) : ("fell", fell);
        string share = count == n ? $"The mass {moved} in all {n} groups" : $"The mass {moved} in {count} of {n} groups";
        string chance = string.Create(CultureInfo.InvariantCulture, $"{(signs < 0.001 ? "p < 0.001" : $"p = {signs:F3}")}, sign test");
        return shown
            ? $"{share}: chance alone would not do that ({chance}), so these data show that the mass {(rises ? "rises" : "falls")}."
            : $"{share}: chance could do that ({chance}), so these data do not show that the mass {(rises ? "rises" : "falls")}.";
    }

    private static string FewGroups(int n, double mean, double u, double z, bool clear, bool rises)
    {
        string direction = rises ? "rose" : "fell";
        string who = n == 1 ? "One group" : $"{n} groups";
        string numbers = string.Create(
            CultureInfo.InvariantCulture, $"{Figures.Text(mean, Figures.DecimalsFor(u))} g, {Math.Abs(z):F1} times its standard uncertainty");
        return clear
            ? $"The mass {direction}, on average by {Figures.Text(Math.Abs(mean), Figures.DecimalsFor(u))} g, {Math.Abs(z).ToString("F1", CultureInfo.InvariantCulture)} times what the balance leaves open; {who.ToLowerInvariant()} cannot show more than that about other groups."
            : $"These data do not show that the mass {direction}: the mean change is {numbers}, and {who.ToLowerInvariant()} are too few for more.";
    }

    private static ChangeEvidence Sameness(QuantityEstimate[] changes, double bandInGrams)
    {
        double[] values = [.. changes.Select(c => c.Value)];
        double u = Math.Sqrt(changes.Sum(c => c.StandardUncertainty * c.StandardUncertainty)) / changes.Length;
        double mean = Summary.Mean(values);
        double below = StandardNormal.UpperTail((mean + bandInGrams) / u);
        double above = StandardNormal.UpperTail((bandInGrams - mean) / u);
        double p = Math.Max(below, above);
        string numbers = $"{Figures.WithUncertainty(mean, u)} g on average";
        string band = $"{bandInGrams.ToString("0.####", CultureInfo.InvariantCulture)} g";
        return new ChangeEvidence.Sameness(
            bandInGrams, p, p < Level,
            p < Level
                ? $"The mass stayed the same within {band}: the change is {numbers}, and a larger one is excluded (95 %)."
                : $"These data cannot exclude a change of more than {band}: it is {numbers}.");
    }
}
