using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Checking;

/// <summary>
/// The sample's mass stands in up to three places of a file: the law that groups are drawn from, the usual sample of a plan, and what
/// the kit list puts out. Changed in one place alone, a class is planned, simulated and supplied for different amounts.
/// </summary>
internal static class SampleCheck
{
    /// <summary>How far they may lie apart, as a share: rounding and a spoonful more (judgement).</summary>
    private const double Apart = 0.1;

    public static IEnumerable<CheckFinding> Of(Practical practical, AtomicWeights weights, FilePlaces places)
    {
        var usually = new Circumstances(practical);
        (double Middle, int Parameter)? drawn = SampleMiddle.With(usually, weights);
        if (practical.Amounts is not AmountsDefinition amounts)
        {
            if (drawn is (double unplanned, int law) && SampleMiddle.Limited(usually, weights) > practical.Limits.LargestSample)
            {
                yield return CheckFinding.At(
                    places.Of("parameters", law, "law"),
                    $"the middle of '{practical.Parameters[law].Id}' makes a sample of {Grams(unplanned)}, but a class may use {Grams(practical.Limits.LargestSample)} at most (line {practical.Limits.At.Line})",
                    "draw less, or raise 'largestSample' if your employer's risk assessment allows it");
            }

            yield break;
        }

        double usual = amounts.UsualInGrams;
        if (drawn is (double middle, int parameter) && Differ(middle, usual))
        {
            yield return CheckFinding.At(
                places.Of("parameters", parameter, "law"),
                $"the middle of '{practical.Parameters[parameter].Id}' makes a sample of {Grams(middle)}, but the usual sample on line {amounts.At.Line} is {Grams(usual)}",
                "give both the same mass: 'law' here and 'usual' there");
        }

        foreach (KitItem item in practical.Kit.Where(k => k.Need is { IsSample: true, Per: KitPer.Group } && Differ(k.Need.Number, usual)))
        {
            yield return CheckFinding.At(
                item.At,
                $"the kit puts out {Grams(item.Need.Number)} of '{item.Id}' for a group, but the usual sample on line {amounts.At.Line} is {Grams(usual)}",
                "give both the same mass: 'perGroup' here and 'usual' there");
        }
    }

    private static bool Differ(double one, double other) => Math.Abs(one - other) > Apart * Math.Max(Math.Abs(one), Math.Abs(other)) * (1 + 1e-9);

    private static string Grams(double value) => value.ToString("G4", CultureInfo.InvariantCulture) + " g";
}
