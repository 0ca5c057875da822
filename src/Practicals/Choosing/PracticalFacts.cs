using System.Runtime.CompilerServices;
using Calx.Chemistry.Elements;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;

namespace Calx.Practicals.Choosing;

/// <summary>What a teacher chooses a practical by: what happens in it, and what it needs. All of it follows from its file.</summary>
public sealed class PracticalFacts
{
    /// <summary>So many steps of the balance the change of mass must have at the least to be seen for what it is; fewer leave a tenth of it to the last
    /// digit (judgement).</summary>
    private const double FewestSteps = 10;

    /// <summary>Words by which files call the place with its own draught.</summary>
    private const string FumeCupboard = "fume cupboard";

    private static readonly ConditionalWeakTable<Practical, PracticalFacts> Known = [];

    private PracticalFacts(Practical practical)
    {
        Family = practical.Family;
        Minutes = LessonMinutes.Of(practical);
        ChangeInGrams = ChangeOf(practical);
        CoarsestStepInGrams = StepOf(practical, ChangeInGrams);
        HasFlame = practical.Kit.Any(k => k.Flame);
        NeedsFumeCupboard = practical.Kit.Select(k => k.Label).Concat(practical.Steps.Select(s => s.Label)).Append(practical.Limits.Note ?? "")
            .Any(text => text.Contains(FumeCupboard, StringComparison.OrdinalIgnoreCase));
        IsDemonstration = practical.Limits.IsDemonstration;
    }

    /// <summary>What happens.</summary>
    public PracticalFamily Family { get; }

    /// <summary>How long it takes.</summary>
    public LessonMinutes Minutes { get; }

    /// <summary>By how much the mass changes with the usual sample when all goes well, in g and without a sign; null where nothing is to change, or where it
    /// cannot be told.</summary>
    public double? ChangeInGrams { get; }

    /// <summary>The coarsest step of a balance, in g, that shows it; null where any does.</summary>
    public double? CoarsestStepInGrams { get; }

    /// <summary>Whether there is a naked flame.</summary>
    public bool HasFlame { get; }

    /// <summary>Whether a fume cupboard is needed.</summary>
    public bool NeedsFumeCupboard { get; }

    /// <summary>Whether it is done once, by the teacher.</summary>
    public bool IsDemonstration { get; }

    /// <summary>Of a practical; worked out once.</summary>
    public static PracticalFacts Of(Practical practical)
    {
        ArgumentNullException.ThrowIfNull(practical);
        return Known.GetValue(practical, static p => new PracticalFacts(p));
    }

    private static double? ChangeOf(Practical practical)
    {
        if (practical.Findings.Expect == ExpectedChange.Same)
        {
            return null;
        }

        try
        {
            double change = Math.Abs(new IdealRun(practical, AtomicWeights.Iupac2024).Accepted(practical.Findings.Change));
            return double.IsFinite(change) && change > 0 ? change : null;
        }
        catch (Exception mistake) when (mistake is UndefinedResultException or ArgumentException or InvalidOperationException)
        {
            // A file whose numbers cannot be worked with still stands in the list.
            return null;
        }
    }

    /// <summary>Where nothing is to change, the band within which that is concluded has two steps.</summary>
    private static double? StepOf(Practical practical, double? change)
    {
        const double StepsOfABand = 2;
        ConclusionTest.Stays? stays = practical.Conclusions.Select(c => c.Test).OfType<ConclusionTest.Stays>().FirstOrDefault(s => s.WithinInGrams > 0);
        return change / FewestSteps ?? stays?.WithinInGrams / StepsOfABand;
    }
}
