using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Program;

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
        if (practical.Amounts is not AmountsDefinition amounts)
        {
            yield break;
        }

        double usual = amounts.UsualInGrams;
        if (Drawn(practical, weights) is (double middle, int parameter) && Differ(middle, usual))
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

    /// <summary>The sample of a middling group in g, and the parameter that it follows; null where no single one is the sample.</summary>
    private static (double Middle, int Parameter)? Drawn(Practical practical, AtomicWeights weights)
    {
        try
        {
            var rule = new CauseRule(new Circumstances(practical), new BenchProgram(practical, weights), weights);
            int amount = rule.SampleAmount();
            return amount >= 0 && rule.MiddleSample(amount) is double middle && double.IsFinite(middle) ? (middle, rule.Amounts.Parameters[amount]) : null;
        }
        catch (Exception mistake) when (mistake is UndefinedResultException or ArgumentException or InvalidOperationException)
        {
            // Numbers that cannot be worked with are told by the trial run.
            return null;
        }
    }

    private static bool Differ(double one, double other) => Math.Abs(one - other) > Apart * Math.Max(Math.Abs(one), Math.Abs(other)) * (1 + 1e-9);

    private static string Grams(double value) => value.ToString("G4", CultureInfo.InvariantCulture) + " g";
}
