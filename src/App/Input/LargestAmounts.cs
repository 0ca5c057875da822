using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.App.Input;

/// <summary>The most that a practical allows. Nothing passes it, not even on paper: a sheet is soon printed from it.</summary>
internal static class LargestAmounts
{
    private const double Slack = 1 + 1e-9;

    /// <summary>Why so many groups, or so much of the sample, may not be; null where they may.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="groups">The groups.</param>
    /// <param name="sample">The usual mass of a sample in g; null for the practical's own, which a file of one's own may have set too high.</param>
    /// <param name="conditions">What is said of the class: it may change what groups weigh out.</param>
    public static string? Passed(Practical practical, int groups, double? sample, IReadOnlyList<string> conditions)
    {
        if (UsualGroups.TooMany(practical, groups) is string tooMany)
        {
            return tooMany;
        }

        double largest = PlanSettings.LargestSample(practical);
        double mass = sample ?? Math.Max(
            practical.Amounts?.UsualInGrams ?? 0, SampleMiddle.Limited(new Circumstances(practical, conditions), AtomicWeights.Iupac2024) ?? 0);
        bool fits = largest < practical.Limits.LargestSample;
        return mass <= largest * Slack ? null : string.Create(
            CultureInfo.InvariantCulture,
            $"{mass:0.######} g is more than {(fits ? "the vessel takes" : "a class may use")}: {largest} g at most{(practical.Limits.Note is null ? "" : $" ({practical.Limits.Note})")}");
    }
}
