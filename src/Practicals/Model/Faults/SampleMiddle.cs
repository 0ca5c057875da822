using Calx.Chemistry.Elements;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Program;

namespace Calx.Practicals.Model.Faults;

/// <summary>The sample of a middling group, as the laws of a practical's file draw it.</summary>
public static class SampleMiddle
{
    /// <summary>Its mass in g; null where no single number of the file is the sample, or the file's numbers cannot be worked with. Where nothing is to change,
    /// all that stands on the pan counts as the sample, water and all, and that is not what a limit is about: null too.</summary>
    /// <param name="circumstances">The practical, and what is said of the class.</param>
    /// <param name="weights">Atomic weights.</param>
    public static double? Limited(Circumstances circumstances, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(circumstances);
        return circumstances.Practical.Findings.Expect == ExpectedChange.Same ? null : With(circumstances, weights)?.Middle;
    }

    /// <summary>Its mass in any practical, with the place of the parameter that it follows.</summary>
    internal static (double Middle, int Parameter)? With(Circumstances circumstances, AtomicWeights weights)
    {
        try
        {
            var rule = new CauseRule(circumstances, new BenchProgram(circumstances.Practical, weights), weights);
            int amount = rule.SampleAmount();
            return amount >= 0 && rule.MiddleSample(amount) is double middle && double.IsFinite(middle) ? (middle, rule.Amounts.Parameters[amount]) : null;
        }
        catch (Exception mistake) when (mistake is UndefinedResultException or ArgumentException or InvalidOperationException)
        {
            // Numbers that cannot be worked with are told by the check of the file and by whatever uses it.
            return null;
        }
    }
}
